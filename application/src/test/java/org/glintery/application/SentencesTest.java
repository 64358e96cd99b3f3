package org.glintery.application;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What a user reads stands in bundles: no sentence, and no piece of one to be glued together, stands in the code. */
class SentencesTest {
    private static final Path MODULES = Path.of("..", "modules");

    /** Not for users, or not shown by us: tests, benchmarks, and what is invented for the demo, but for its verb. */
    private static final Set<String> OTHERS =
            Set.of("testkit", "selftest", "stopwatch", "benchmarks", "demo", "addon-sample");

    /** Dates are written and read by one grammar of English words, which is code. */
    private static final Path DATES = Path.of("api", "src", "main", "java", "org", "glintery", "api", "time");

    private static final Pattern NO_LOCALE =
            Pattern.compile("String\\.format\\(\\s*\"|\\.to(Lower|Upper)Case\\(\\)|\\.formatted\\(");

    /** The names by which columns of other people's tables are known, and what the program is called by. */
    private static final Set<String> WORDS_TO_READ = Set.of("Column.java", "VerbHelp.java", "WorkshopVerb.java");

    @Test
    void standInBundles() throws IOException {
        try (Stream<Path> files = Files.walk(MODULES)) {
            List<Path> sources =
                    files.filter(SentencesTest::isOfTheApplication).sorted().toList();
            assertThat(sources).as("sources that were looked at").hasSizeGreaterThan(700);
            assertThat(sources).anyMatch(file -> file.endsWith("WorkshopDemoVerb.java"));
            assertThat(sources.stream().flatMap(SentencesTest::sentences)).isEmpty();
        }
    }

    /** What such a fault says ends up in a refusal. */
    @Test
    void standInBundles_alsoWhatIsSaidOfTextThatIsNotAsItShouldBe() throws IOException {
        try (Stream<Path> files = Files.walk(MODULES)) {
            List<Path> sources =
                    files.filter(SentencesTest::isOfTheApplication).sorted().toList();
            assertThat(sources.stream().flatMap(file -> refusing(read(file)).map(text -> file + ": " + text)))
                    .isEmpty();
        }
        assertThat(refusing("throw new MalformedException(\"it ends \" + where, e);"))
                .containsExactly("it ends ");
        assertThat(refusing("throw new MalformedException(Bundle.early(text(\"owner\")));"))
                .isEmpty();
    }

    /** The machine's language would write "40,5" here and "40.5" there, and make a dotless i of an I. */
    @Test
    void areNotWrittenByTheMachinesLanguage() throws IOException {
        try (Stream<Path> files = Files.walk(MODULES)) {
            List<Path> sources =
                    files.filter(SentencesTest::isOfTheApplication).sorted().toList();
            assertThat(sources.stream().filter(file -> saysNoLocale(read(file))))
                    .isEmpty();
        }
        assertThat(saysNoLocale("String.format(\n  \"%.1f\", cm)")).isTrue();
        assertThat(saysNoLocale("word.toUpperCase()")).isTrue();
        assertThat(saysNoLocale("String.format(Locale.ROOT, \"%.1f\", cm)")).isFalse();
    }

    private static boolean saysNoLocale(String code) {
        return NO_LOCALE.matcher(code).find();
    }

    private static Stream<String> refusing(String code) {
        return SourceStrings.of(code).stream()
                .filter(literal ->
                        !literal.calls().isEmpty() && literal.calls().get(0).equals("MalformedException"))
                .map(SourceStrings.Literal::text);
    }

    @Test
    void areSeen_butNotInAnnotationsLogsFaultsOrStatements() {
        assertThat(seen("say(\"The bag \" + name + \" is empty.\");")).hasSize(2);
        assertThat(seen("return \"Nothing was changed.\";")).hasSize(1);
        assertThat(seen("String s = \"\"\"\n  Nothing was \\\"changed\\\".\"\"\";"))
                .hasSize(1);
        assertThat(seen("@Messages({\"a=Nothing was changed.\", \"b=The bag (so big) is empty.\"}) void f() {}"))
                .isEmpty();
        assertThat(seen("LOG.log(Level.WARNING, \"The bag is empty: \" + name, e);"))
                .isEmpty();
        assertThat(seen("throw new IllegalStateException(\"The bag is \" + empty(name));"))
                .isEmpty();
        assertThat(seen("// say(\"Nothing was changed.\")\n/* \"Nothing was changed.\" */"))
                .isEmpty();
        assertThat(seen("sql(\"select no from drill where no = \" + number);")).isEmpty();
        assertThat(seen("char quote = '\"'; file(\"a.json\");")).isEmpty();
    }

    private static List<String> seen(String code) {
        return SourceStrings.of(code).stream()
                .filter(SourceStrings.Literal::isForPeople)
                .map(SourceStrings.Literal::text)
                .toList();
    }

    private static boolean isOfTheApplication(Path file) {
        Path inModules = MODULES.relativize(file);
        return file.toString().endsWith(".java")
                && inModules.startsWith(inModules.getName(0).resolve(Path.of("src", "main")))
                && (!OTHERS.contains(inModules.getName(0).toString())
                        || inModules.startsWith("demo") && file.toString().endsWith("Verb.java"))
                && !inModules.startsWith(DATES)
                && !WORDS_TO_READ.contains(file.getFileName().toString());
    }

    private static Stream<String> sentences(Path file) {
        return seen(read(file)).stream()
                .map(text -> MODULES.relativize(file).getName(0) + " " + file.getFileName() + ": " + text);
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
