package org.glintery.application;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What the modules export is as their committed signature says. To write the signatures anew: {@code mvn -B verify
 * -Dtest=ApiSignatureTest -Dglintery.signatures=write -Dsurefire.failIfNoSpecifiedTests=false}; where a promise is broken
 * on purpose, {@code break} instead of {@code write}.
 */
class ApiSignatureTest {
    private static final Path MODULES = Path.of("../modules");

    @ParameterizedTest
    @CsvSource({"api, 100", "workbench, 30", "colour, 10", "planning, 12"})
    void everyPublicTypeSaysHowStableItIs(String module, int leastTypes) {
        List<Class<?>> types = ExportedTypes.of(module);
        assertThat(types).hasSizeGreaterThanOrEqualTo(leastTypes);
        assertThat(types.stream()
                        .filter(type -> SignatureReading.status(type).isEmpty())
                        .map(Class::getName))
                .as("neither stable nor a preview, or both")
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"api", "workbench", "colour", "planning"})
    void keepsWhatItPromised(String module) throws IOException {
        Path file = MODULES.resolve(module).resolve("signature.txt");
        SignatureFile now = SignatureFile.of(ExportedTypes.of(module));
        String asked = System.getProperty("glintery.signatures", "");
        if (!asked.equals("break")) {
            assertThat(SignatureFile.read(file).brokenBy(now))
                    .as("promises of %s that add-ons rely on", module)
                    .isEmpty();
        }
        if (!asked.isEmpty()) {
            Files.writeString(file, now.text());
        }
        assertThat(file).as("the signature of %s", module).hasContent(now.text());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "api/src/main/java/org/glintery/api/verb/Verb.java | String summary(); "
                        + "| String summary(); String icon(); | is implemented by add-ons and gained 'String icon()'",
                "api/src/main/java/org/glintery/api/verb/Verb.java | String summary(); "
                        + "| String summary(); default String icon() { return null; } | gained 'default String icon()'",
                "api/src/main/java/org/glintery/api/framing/Framing.java | Result<FrameFigures> figures( "
                        + "| Result<FrameFigures> sums( | FrameFigures> figures(",
                "api/src/main/java/org/glintery/api/workshop/DocRef.java | UUID id) { "
                        + "| UUID id, int version) { | UUID id, int version)",
                "api/src/main/java/org/glintery/api/stash/Standing.java | LET_GO | PASSED_ON | lost 'constant LET_GO'",
                "colour/src/main/java/org/glintery/colour/Lab.java | public record Lab | record Lab | is gone"
            })
    void namesABreakThatIsPlanted(String source, String old, String instead, String told, @TempDir Path folder) {
        assertThat(brokenBy(source, old, instead, folder)).anyMatch(line -> line.contains(told));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "api/src/main/java/org/glintery/api/workshop/View.java | long revision(); | long revision(); int size();",
                "api/src/main/java/org/glintery/api/stash/Standing.java | LET_GO | LET_GO, LENT",
                "api/src/main/java/org/glintery/api/verb/TextTable.java | boolean isEmpty() | boolean hasNoRows()"
            })
    void letsServicesGrow_andPreviewsChange(String source, String old, String instead, @TempDir Path folder) {
        assertThat(brokenBy(source, old, instead, folder)).isEmpty();
    }

    private static List<String> brokenBy(String source, String old, String instead, Path folder) {
        Path module = MODULES.resolve(source.substring(0, source.indexOf('/')));
        SignatureFile committed = SignatureFile.read(module.resolve("signature.txt"));
        Class<?> planted = PlantedType.of(folder, MODULES.resolve(source), old, instead);
        return committed.brokenBy(committed.with(planted));
    }
}
