package org.glintery.application;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The recipes on the package pages of the extension points: every piece of code in them is the sample add-on's. */
class RecipesTest {
    private static final Path MODULES = Path.of("../modules");
    private static final Path SAMPLE = MODULES.resolve("addon-sample/src/main/java");
    private static final Pattern CODE = Pattern.compile("<pre>\\{@code(.*?)}</pre>", Pattern.DOTALL);
    private static final Pattern STEP = Pattern.compile("<li>");

    @ParameterizedTest
    @CsvSource({
        "workbench/src/main/java/org/glintery/workbench/spi, 10",
        "api/src/main/java/org/glintery/api/verb, 9",
        "api/src/main/java/org/glintery/api/workshop, 9"
    })
    void showCodeOfTheSampleInEveryStep(String page, int steps) throws IOException {
        String text = Files.readString(MODULES.resolve(page).resolve("package-info.java"));
        List<String> code = CODE.matcher(text)
                .results()
                .map(found -> flat(found.group(1).replaceAll("(?m)^ \\*", "")))
                .toList();
        assertThat(STEP.matcher(text).results().map(MatchResult::group)).hasSize(steps);
        assertThat(code).hasSize(steps);
        List<String> sample = sample();
        assertThat(code.stream()
                        .filter(one -> sample.stream().noneMatch(file -> file.contains(one)))
                        .toList())
                .as("code that is not the sample's")
                .isEmpty();
    }

    @Test
    void cover_everyKindThatTheSampleHas() {
        assertThat(sample())
                .anyMatch(file -> file.contains(flat("implements PieceTab")))
                .anyMatch(file -> file.contains(flat("implements TodayCard")))
                .anyMatch(file -> file.contains(flat("implements Verb")))
                .anyMatch(file -> file.contains(flat("implements ServiceFactory")))
                .anyMatch(file -> file.contains(flat("DocumentType<CareNote> TYPE")));
    }

    private static List<String> sample() {
        try (Stream<Path> files = Files.walk(SAMPLE)) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .map(RecipesTest::read)
                    .map(RecipesTest::flat)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Line breaks and indents are the formatter's: they don't count. */
    private static String flat(String code) {
        return code.replaceAll("\\s+", "");
    }
}
