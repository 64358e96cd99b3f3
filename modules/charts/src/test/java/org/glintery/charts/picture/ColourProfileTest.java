package org.glintery.charts.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.glintery.colour.LinearRgb;
import org.glintery.colour.Srgb;
import org.junit.jupiter.api.Test;

class ColourProfileTest {

    // Display P3 under D50: the chromaticities of CSS Color 4, section 10.4, adapted by Bradford, as in common
    // profiles.
    static final double[][] DISPLAY_P3 = {
        {0.515102, 0.241182, -0.001050}, {0.291965, 0.692236, 0.041881}, {0.157153, 0.066582, 0.784378}
    };

    // CSS Color 4, section 18: linear light of the primaries of Display P3 in those of sRGB.
    @Test
    void takesThePrimariesOfDisplayP3_beyondWhatSrgbShows() {
        ColourProfile profile = ColourProfile.of(IccProfiles.matrix(DISPLAY_P3, IccProfiles.srgbCurve()))
                .orElseThrow();
        near(profile.primaries().get(0), 1.2249, -0.0420, -0.0196);
        near(profile.primaries().get(1), -0.2249, 1.0420, -0.0786);
        near(profile.primaries().get(2), 0, 0, 1.0983);
    }

    private static void near(LinearRgb light, double red, double green, double blue) {
        assertThat(light.red()).isCloseTo(red, within(5e-4));
        assertThat(light.green()).isCloseTo(green, within(5e-4));
        assertThat(light.blue()).isCloseTo(blue, within(5e-4));
    }

    @Test
    void readsCurvesOfEveryForm() {
        double[] srgb = table(IccProfiles.srgbCurve());
        for (int i = 0; i < 256; i++) {
            assertThat(srgb[i]).isCloseTo(new Srgb(i, 0, 0).linear().red(), within(2e-4));
        }
        assertThat(table(IccProfiles.gamma(2))[128]).isCloseTo(Math.pow(128 / 255.0, 2), within(1e-9));
        assertThat(table(IccProfiles.table())[128]).isCloseTo(128 / 255.0, within(1e-9));
        assertThat(table(IccProfiles.table(0, 0, 65535))[191]).isCloseTo(2 * 191 / 255.0 - 1, within(1e-9));
        assertThat(table(IccProfiles.parametric(0, 3))[51]).isCloseTo(0.008, within(1e-6));
        // ICC.1:2022, table 68: (aX + b)^g above -b/a, else 0; type 2 adds c; type 4 adds e above and f below d
        assertThat(table(IccProfiles.parametric(1, 2, 2, -1))[127]).isZero();
        assertThat(table(IccProfiles.parametric(1, 2, 2, -1))[255]).isCloseTo(1, within(1e-6));
        assertThat(table(IccProfiles.parametric(2, 2, 0.5, 0, 0.25))[255]).isCloseTo(0.5, within(1e-6));
        assertThat(table(IccProfiles.parametric(4, 2, 0.5, 0, 0.5, 0.5, 0.25, 0.125))[51])
                .isCloseTo(0.225, within(1e-5));
        assertThat(table(IccProfiles.parametric(4, 2, 0.5, 0, 0.5, 0.5, 0.25, 0.125))[255])
                .isCloseTo(0.5, within(1e-5));
    }

    private static double[] table(byte[] curve) {
        return ColourProfile.of(IccProfiles.matrix(DISPLAY_P3, curve))
                .orElseThrow()
                .tables(256)[1];
    }

    @Test
    void takesNoHarm_whenTheProfileIsBroken() {
        byte[] whole = IccProfiles.matrix(DISPLAY_P3, IccProfiles.srgbCurve());
        for (int length = 0; length < whole.length; length += 7) {
            assertThat(ColourProfile.of(Arrays.copyOf(whole, length))).isNotNull();
        }
        long seed = 81;
        Random random = new Random(seed);
        for (int i = 0; i < 2_000; i++) {
            byte[] broken = whole.clone();
            for (int k = 0; k < 6; k++) {
                broken[128 + random.nextInt(broken.length - 128)] = (byte) random.nextInt();
            }
            ColourProfile.of(broken)
                    .ifPresent(profile -> assertThat(profile.tables(256)[0])
                            .as("seed %d", seed)
                            .hasSize(256));
        }
    }
}
