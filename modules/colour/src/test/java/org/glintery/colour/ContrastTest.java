package org.glintery.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ContrastTest {

    // WCAG 2.2 relative luminance, against white.
    @ParameterizedTest
    @CsvSource({
        "#000000, 21",
        "#777777, 4.4781",
        "#767676, 4.5422",
        "#595959, 7.0047",
        "#ff0000, 3.9985",
        "#0000ff, 8.5925",
        "#008000, 5.1374",
    })
    void givesTheRatioAgainstWhite(String hex, double expected) {
        Srgb colour = Srgb.parse(hex).orElseThrow();
        assertThat(Contrast.ratio(colour, Srgb.WHITE)).isCloseTo(expected, within(5e-5));
        assertThat(Contrast.ratio(Srgb.WHITE, colour)).isCloseTo(expected, within(5e-5));
    }

    @Test
    void picksTheInkThatIsReadBetter() {
        assertThat(Contrast.inkOn(new Srgb(255, 255, 0))).isEqualTo(Srgb.BLACK);
        assertThat(Contrast.inkOn(new Srgb(0, 0, 128))).isEqualTo(Srgb.WHITE);
        assertThat(Contrast.ratio(Srgb.WHITE, Srgb.WHITE)).isEqualTo(1);
    }
}
