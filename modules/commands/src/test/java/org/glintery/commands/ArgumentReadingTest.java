package org.glintery.commands;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.glintery.api.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ArgumentReadingTest {

    @Test
    void readsBothWaysOfGivingAValue_andKeepsAllThatAreRepeated() {
        Arguments read = read("--times", "3", "hello", "--times=4", "--loud").orThrow();
        assertThat(read.values("times")).containsExactly("3", "4");
        assertThat(read.value("times")).contains("4");
        assertThat(read.value("words")).contains("hello");
        assertThat(read.flag("loud")).isTrue();
    }

    @Test
    void takesWordsOfOneDashAsPlaces_soThatStandardInputAndNegativeCountsArrive() {
        assertThat(read("-").orThrow().value("words")).contains("-");
        assertThat(read("-5").orThrow().value("words")).contains("-5");
        assertThat(read("x", "--times", "-5").orThrow().value("times")).contains("-5");
    }

    @Test
    void takesEverythingBehindTwoDashesAsPlaces() {
        assertThat(read("--", "--loud").orThrow().value("words")).contains("--loud");
    }

    @Test
    void keepsBlanksQuotesLineBreaksAndEmptyValuesAsTheyAre() {
        String odd = " a'b\"c\n$(touch x) ü\u2728";
        assertThat(read(odd, "--times=").orThrow().value("words")).contains(odd);
        assertThat(read(odd, "--times=").orThrow().value("times")).contains("");
    }

    @Test
    void needsNothing_whenOnlyHelpIsAskedFor() {
        assertThat(read("--help").orThrow().flag("help")).isTrue();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    hello --lout       | There is no option --lout. Perhaps --loud?
                    hello --zzzzzz     | There is no option --zzzzzz.
                    hello --loud=yes   | --loud takes no value.
                    hello --times      | --times needs a value: N.
                    hello --times --json | --times needs a value: N.
                    hello world        | Left over: 'world'. Put what holds blanks in quotes.
                    --loud             | WORDS is missing: what to say.
                    """)
    void saysWhatIsWrong(String words, String text) {
        assertThat(read(words.split(" "))).isEqualTo(Result.refused("wrong-usage", text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "\t\n", "\u001b", "\u2003\u0007 "})
    void isWrongUsage_whenARequiredArgumentSaysNothing(String blank) {
        assertThat(read(blank)).isEqualTo(Result.refused("wrong-usage", "WORDS is empty: what to say."));
        assertThat(read("x", "--times=" + blank)).isInstanceOf(Result.Ok.class);
    }

    private static Result<Arguments> read(String... words) {
        return ArgumentReading.of(SpokenVerb.echo("say")).read(List.of(words));
    }
}
