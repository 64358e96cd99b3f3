package org.glintery.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ColourVisionTest {

    private static final Srgb RED = new Srgb(255, 0, 0);

    // Machado, Oliveira, Fernandes, IEEE TVCG 15(6):1291-1298, 2009, severity 1.0: linearise, multiply, clip, encode,
    // round.
    @ParameterizedTest
    @CsvSource({
        "PROTAN, #ff0000, 109, 95, 0",
        "DEUTAN, #ff0000, 163, 144, 0",
        "TRITAN, #ff0000, 255, 0, 15",
        "PROTAN, #0000ff, 0, 89, 255",
        "DEUTAN, #0000ff, 0, 61, 251",
        "TRITAN, #0000ff, 0, 107, 150",
    })
    void showsAMissingCone_asPublished(ColourVision vision, String hex, int red, int green, int blue) {
        assertThat(vision.seen(Srgb.parse(hex).orElseThrow(), 1)).isEqualTo(new Srgb(red, green, blue));
    }

    // The same matrix on encoded values gives 94, 71, 0 for red under deutan: the usual mistake.
    @Test
    void actsOnLight_notOnEncodedValues() {
        LinearRgb encodedAsIfLight = ColourVision.DEUTAN.seen(new LinearRgb(1, 0, 0), 1);
        assertThat(Math.round(255 * encodedAsIfLight.red())).isEqualTo(94);
        assertThat(Math.round(255 * encodedAsIfLight.green())).isEqualTo(71);
        assertThat(ColourVision.DEUTAN.seen(RED, 1)).isNotEqualTo(new Srgb(94, 71, 0));
    }

    // The entry m00 of the published tables: protan at .3 is .630323, at .4 .539009; at 0 it is 1.
    @Test
    void interpolates_betweenPublishedSteps() {
        LinearRgb red = new LinearRgb(1, 0, 0);
        assertThat(ColourVision.PROTAN.seen(red, 0.3).red()).isCloseTo(0.630323, within(1e-9));
        assertThat(ColourVision.PROTAN.seen(red, 0.35).red()).isCloseTo((0.630323 + 0.539009) / 2, within(1e-9));
        assertThat(ColourVision.PROTAN.seen(red, 1).red()).isCloseTo(0.152286, within(1e-9));
    }

    @ParameterizedTest
    @EnumSource
    void leavesGreysAlone_andAllColoursAtSeverityNone(ColourVision vision) {
        assertThat(vision.seen(RED, 0)).isEqualTo(RED);
        assertThat(vision.seen(new Srgb(128, 128, 128), 1)).isEqualTo(new Srgb(128, 128, 128));
        assertThatThrownBy(() -> vision.seen(RED, 1.1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> vision.seen(RED, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}
