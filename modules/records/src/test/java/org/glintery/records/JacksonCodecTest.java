package org.glintery.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.glintery.api.Json;
import org.glintery.api.JsonCodec;
import org.glintery.api.workshop.DocumentType;
import org.glintery.testkit.FilledRecords;
import org.glintery.testkit.PlainCodec;
import org.glintery.testkit.contract.JsonCodecContract;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class JacksonCodecTest extends JsonCodecContract {
    private final JacksonCodec codec = new JacksonCodec();
    private final PlainCodec plain = new PlainCodec();

    @Override
    protected JsonCodec codec() {
        return codec;
    }

    static List<DocumentType<?>> types() {
        return EveryFieldTest.types();
    }

    @ParameterizedTest
    @MethodSource("types")
    <T extends Record> void agreesWithThePlainCodec(DocumentType<T> type) {
        T value = new FilledRecords().of(type.record());
        Json json = codec.toJson(value);
        assertThat(json).isEqualTo(plain.toJson(value));
        assertThat(plain.fromJson(json, type.record())).isEqualTo(value);
        assertThat(codec.parse(plain.compact(json))).isEqualTo(json);
        assertThat(plain.parse(codec.pretty(json))).isEqualTo(json);
    }
}
