package org.glintery.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.glintery.api.Json;
import org.glintery.api.JsonCodec;
import org.glintery.api.MalformedException;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Shape;
import org.glintery.api.workshop.DocumentType;
import org.glintery.testkit.FilledRecords;
import org.glintery.testkit.PlainCodec;
import org.glintery.testkit.contract.JsonCodecContract;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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

    /** A drill without a code: the record's code refuses it in words of its own, which are for programmers. */
    @Test
    void namesTheField_whenARecordRefusesWhatItIsToHold() {
        record Holding(Drill drill) {}
        Json good = codec.toJson(new Holding(Drill.of(Shape.ROUND, 280, "own", "T1")));
        Json blank = codec.parse(codec.compact(good).replace("\"T1\"", "\"\""));
        assertThat(blank).isNotEqualTo(good);
        assertThatThrownBy(() -> codec.fromJson(blank, Holding.class))
                .isInstanceOf(MalformedException.class)
                .hasMessage(
                        "drill can't be as it is written: a part of it is out of range, or its parts don't go together");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "''|there is nothing in this text",
                "7 8|something follows where it should end",
                "1e999999999999|a number in it is too large or too small",
                "1e9999|a number in it has too many digits"
            })
    void saysWhatIsWrongWithAText_inWordsOfItsBundle(String text, String words) {
        assertThatThrownBy(() -> codec.parse(text))
                .isInstanceOf(MalformedException.class)
                .hasMessage(words);
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
