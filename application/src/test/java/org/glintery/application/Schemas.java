package org.glintery.application;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The committed schemas of answers, as they are shipped. */
final class Schemas {

    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

    private Schemas() {}

    /** Fails unless the answer is as the schema says. @param name such as {@code kit-add} or {@code refused} */
    static void check(String name, String answer) {
        Schema schema = REGISTRY.getSchema(text(name));
        assertThat(schema.validate(answer, InputFormat.JSON))
                .as("%s answers %s", name, answer)
                .isEmpty();
    }

    private static String text(String name) {
        try (InputStream in = Schemas.class.getResourceAsStream("/org/glintery/commands/schemas/" + name + ".json")) {
            assertThat(in).as("the schema %s", name).isNotNull();
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
