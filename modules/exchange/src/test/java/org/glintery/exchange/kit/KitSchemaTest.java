package org.glintery.exchange.kit;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.glintery.api.Json;
import org.glintery.api.JsonCodec;
import org.glintery.api.ledger.Amount;
import org.glintery.api.stash.Legend;
import org.junit.jupiter.api.Test;
import org.openide.util.Lookup;

/** The published schema of kit files. */
class KitSchemaTest {
    private String schema() throws IOException {
        try (var in = getClass().getResourceAsStream("/org/glintery/exchange/kit.schema.json")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static BigDecimal limit(Json.Obj schema, String... path) {
        Json.Obj at = schema;
        for (String name : Arrays.copyOf(path, path.length - 1)) {
            at = (Json.Obj) at.get(name).orElseThrow();
        }
        return at.number(path[path.length - 1]).orElseThrow();
    }

    /** The schema is read by others and so repeats the numbers that the program holds. */
    @Test
    void hasTheLimitsInItsSchema_thatHoldEverywhere() throws IOException {
        var schema = (Json.Obj) Lookup.getDefault().lookup(JsonCodec.class).parse(schema());
        assertThat(limit(schema, "$defs", "piece", "properties", "legend", "maxItems"))
                .isEqualByComparingTo(BigDecimal.valueOf(Legend.MOST_LINES));
        assertThat(limit(schema, "$defs", "line", "properties", "bags", "maximum"))
                .isEqualByComparingTo(BigDecimal.valueOf(Amount.MOST_BAGS));
        assertThat(limit(schema, "$defs", "count", "maximum")).isEqualByComparingTo(BigDecimal.valueOf(Amount.MOST));
    }

    @Test
    void publishesASchema_thatIsValidItself() throws IOException {
        String schema = schema();
        var meta = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertThat(meta.validate(schema, InputFormat.JSON)).isEmpty();
        assertThat(meta.validate("{\"type\":\"no-such-kind\"}", InputFormat.JSON))
                .isNotEmpty();
    }
}
