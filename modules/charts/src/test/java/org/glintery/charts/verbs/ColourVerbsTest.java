package org.glintery.charts.verbs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import org.glintery.api.verb.VerbResult;
import org.glintery.testkit.FakeCall;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ColourVerbsTest {

    private static FakeCall call() {
        return new FakeCall(Path.of("no-workshop"));
    }

    // Sharma, Wu, Dalal, Color Res. Appl. 30(1):21-30, 2005, table 1, pairs 1 and 17.
    @ParameterizedTest
    @CsvSource({
        "'50,2.6772,-79.7751', '50,0,-82.7485', 2.0425, a close match",
        "'50.0000, 2.5, 0', '73,25,-18', 27.1492, clearly different",
        "#a0522d, a0522d, 0, the same to the eye"
    })
    void comparesColours(String first, String second, double difference, String words) {
        VerbResult result =
                new ColourCompareVerb().run(call().with("first", first).with("second", second));

        VerbResult.Said said = (VerbResult.Said) result;
        var compared = (ColourCompareVerb.Compared) said.answer();
        assertThat(compared.difference()).isCloseTo(difference, within(5e-5));
        assertThat(said.text()).isEqualTo("%.4f (CIEDE2000): %s.".formatted(compared.difference(), words));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "50,1",
                "50,1,2,3",
                "rust",
                "1;2;3",
                "NaN,0,0",
                "1e308,1,1",
                "1e999,0,0",
                "50,1e200,1e200",
                "-0.1,0,0",
                "100.1,0,0",
                "50,501,0",
                "50,0,-201"
            })
    void isWrongUsage_whenItIsNoColour(String written) {
        assertThat(new ColourCompareVerb().run(call().with("first", "50,0,0").with("second", written)))
                .isInstanceOf(VerbResult.WrongUsage.class);
        assertThat(new ColourNameVerb().run(call().with("hex", written))).isInstanceOf(VerbResult.WrongUsage.class);
    }

    // Kelly and Judd, NBS SP 440, 1976: the centroid of Vivid Pink; CSS Color 4: #ffb6c1 is lightpink.
    @Test
    void namesAColour() {
        VerbResult.Said said = (VerbResult.Said) new ColourNameVerb().run(call().with("hex", "FFB5BA"));

        var named = (ColourNameVerb.Named) said.answer();
        assertThat(named.isccNbs()).isEqualTo(new ColourNameVerb.Name("Vivid Pink", "#ffb5ba", 0));
        assertThat(named.css().name()).isEqualTo("lightpink");
        assertThat(said.text()).startsWith("#ffb5ba: Vivid Pink (ISCC-NBS, 0.0 away); CSS lightpink (");
    }
}
