package org.glintery.club.signing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BoundedJsonTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{",
                "{\"a\":1",
                "{\"a\":1,}",
                "{\"a\":1,\"a\":2}",
                "[1 2]",
                "01",
                "1e9999",
                "\"\t\"",
                "\"\\x\"",
                "nul",
                "1 1",
                "{a:1}",
                "\"\\u12g4\"",
                "--1",
                "NaN"
            })
    void givesUpWhatIsNotJson(String text) {
        assertGivenUp(text, BoundedJson.Reason.NOT_JSON);
    }

    @Test
    void givesUpDeepNesting_andTooManyFields_beforeItTakesMemory() {
        assertGivenUp("[".repeat(1_000_000), BoundedJson.Reason.TOO_DEEP);
        assertGivenUp("[" + "1,".repeat(1_000_000) + "1]", BoundedJson.Reason.TOO_MANY);
    }

    @Test
    void readsWhatCanonicalJsonWrites() throws BoundedJson.GivenUpException {
        String text = "{\"a\":[1,2.5,-3e-7,true,false,null,\"<b>ü\\n\"],\"b\":{}}";
        assertThat(CanonicalJson.text(BoundedJson.read(text))).isEqualTo(text);
    }

    private static void assertGivenUp(String text, BoundedJson.Reason reason) {
        assertThatThrownBy(() -> BoundedJson.read(text))
                .isInstanceOfSatisfying(
                        BoundedJson.GivenUpException.class,
                        e -> assertThat(e.reason()).isEqualTo(reason));
    }
}
