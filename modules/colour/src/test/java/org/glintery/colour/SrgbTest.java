package org.glintery.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SrgbTest {

    // IEC 61966-2-1, CIE 15 and CSS Color 4; computed with npm colorjs.io 0.7.1 and agreed by a second calculation.
    @Test
    void leadsToXyzLabAndOklab_asComputedElsewhere() throws IOException {
        List<String[]> rows = CsvRows.of("srgb_reference_lab_oklab.csv");
        for (String[] row : rows) {
            Srgb colour = Srgb.parse(row[0]).orElseThrow();
            Xyz xyz = colour.xyz();
            close(row, 1, 6e-7, xyz.x(), xyz.y(), xyz.z());
            Lab d50 = Lab.ofD50(xyz.fromD65ToD50());
            close(row, 4, 6e-5, d50.l(), d50.a(), d50.b());
            Lab d65 = colour.lab();
            close(row, 7, 6e-5, d65.l(), d65.a(), d65.b());
            Oklab ok = colour.oklab();
            close(row, 10, 6e-7, ok.l(), ok.a(), ok.b());
        }
        assertThat(rows).hasSize(13);
    }

    private static void close(String[] row, int at, double tolerance, double... values) {
        for (int i = 0; i < values.length; i++) {
            assertThat(values[i])
                    .as(row[0] + " column " + (at + i))
                    .isCloseTo(Double.parseDouble(row[at + i]), within(tolerance));
        }
    }

    @Test
    void comesBack_fromLightXyzLabAndOklab() {
        long seed = 5;
        Random random = new Random(seed);
        for (int i = 0; i < 20_000; i++) {
            Srgb colour = Srgb.ofRgb(random.nextInt());
            assertThat(colour.linear().srgb()).as("seed %d", seed).isEqualTo(colour);
            assertThat(colour.xyz().fromD65ToD50().fromD50ToD65().linearRgb().srgb())
                    .isEqualTo(colour);
            assertThat(colour.lab().xyzD65().linearRgb().srgb()).isEqualTo(colour);
            assertThat(colour.oklab().linearRgb().srgb()).isEqualTo(colour);
            assertThat(Srgb.parse(colour.hex())).contains(colour);
        }
    }

    @ParameterizedTest
    @CsvSource({"#7fffd4, 127, 255, 212", "7FFFD4, 127, 255, 212", "' #abc ', 170, 187, 204", "000, 0, 0, 0"})
    void readsHex(String hex, int red, int green, int blue) {
        assertThat(Srgb.parse(hex)).contains(new Srgb(red, green, blue));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "#", "#12", "#1234", "#12345g", "##123456", "rebeccapurple", "#1234567", "-12345"})
    void readsNothing_whenItIsNoHex(String hex) {
        assertThat(Srgb.parse(hex)).isEmpty();
    }

    @Test
    void refusesChannels_outsideTheByte() {
        assertThatThrownBy(() -> new Srgb(0, 256, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Srgb(-1, 0, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void clipsToTheScreen_whenLightLeavesIt() {
        assertThat(new LinearRgb(-0.2, 1.7, 0).srgb()).isEqualTo(new Srgb(0, 255, 0));
    }
}
