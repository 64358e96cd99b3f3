package org.glintery.application;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Properties;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.glintery.api.verb.Verb;
import org.junit.jupiter.api.Test;
import org.openide.util.Lookup;

/**
 * Every verb's answer has a committed schema, and its name is known also while its feature is switched off. To write
 * the schemas anew: {@code mvn -B verify -Dtest=AnswerSchemasTest -Dglintery.schemas=write
 * -Dsurefire.failIfNoSpecifiedTests=false}.
 */
class AnswerSchemasTest {

    private static final Path RESOURCES = Path.of("../modules/commands/src/main/resources/org/glintery/commands");
    private static final Path SCHEMAS = RESOURCES.resolve("schemas");
    private static final int LEAST_VERBS = 41;
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private final Collection<? extends Verb> verbs = Lookup.getDefault().lookupAll(Verb.class);

    @Test
    void everyVerbHasItsCommittedSchema() throws IOException {
        assertThat(verbs.size()).as("verbs").isGreaterThanOrEqualTo(LEAST_VERBS);
        for (Verb verb : verbs) {
            Path file = SCHEMAS.resolve(AnswerSchema.fileName(verb) + ".json");
            String made = MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(AnswerSchema.of(verb)) + "\n";
            if ("write".equals(System.getProperty("glintery.schemas"))) {
                Files.createDirectories(SCHEMAS);
                Files.writeString(file, made);
            }
            assertThat(file).as("the schema of %s", verb.name()).exists().hasContent(made);
        }
    }

    @Test
    void noSchemaIsLeftBehind_whenItsVerbIsGone() throws IOException {
        List<String> wanted = Stream.concat(verbs.stream().map(AnswerSchema::fileName), Stream.of("refused"))
                .map(name -> name + ".json")
                .toList();
        try (Stream<Path> files = Files.list(SCHEMAS)) {
            assertThat(files.map(file -> file.getFileName().toString())).containsExactlyInAnyOrderElementsOf(wanted);
        }
    }

    @Test
    void everyVerbIsKnownWithItsFeature() throws IOException {
        Properties known = new Properties();
        try (var in = Files.newInputStream(RESOURCES.resolve("verbs.properties"))) {
            known.load(in);
        }
        assertThat(new TreeMap<>(known))
                .isEqualTo(
                        new TreeMap<>(verbs.stream().collect(Collectors.toMap(AnswerSchema::fileName, Verb::feature))));
    }
}
