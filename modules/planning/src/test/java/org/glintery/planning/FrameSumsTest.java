package org.glintery.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FrameSumsTest {

    private static final long IN = Inches.UM_AN_INCH;

    /** 16 x 20 in, moulding 2 in, lip 1/4 in, allowance 1/8 in a dimension. */
    private static final FrameSums FRAME = new FrameSums(16 * IN, 20 * IN, IN / 8, 2 * IN, IN / 4);

    // Exact rails against the trade's rule of thumb, 2 (W + H) + 8 w + allowance, which over-states: 19 5/8, 23 5/8,
    // sum 86 1/2;
    // 88 1/4. The rule is common practice, no published source; the rails follow by hand from the four measures above.
    @Test
    void givesExactRails_belowTheRuleOfThumb() {
        assertThat(inches(FRAME.widthRailUm())).isEqualTo("19 5/8");
        assertThat(inches(FRAME.heightRailUm())).isEqualTo("23 5/8");
        assertThat(inches(FRAME.mouldingLengthUm(0))).isEqualTo("86 1/2");
        assertThat(inches(FRAME.ruleOfThumbUm(IN / 4))).isEqualTo("88 1/4");
    }

    // With the width measured from the rebate, so without a lip, rule and sum agree: 2 (16 + 20) + 8 x 2 + 4 x 1/8.
    @Test
    void agreesWithTheRuleOfThumb_whenTheWidthIsMeasuredFromTheRebate() {
        FrameSums fromRebate = new FrameSums(16 * IN, 20 * IN, IN / 8, 2 * IN, 0);
        assertThat(fromRebate.mouldingLengthUm(0)).isEqualTo(fromRebate.ruleOfThumbUm(4 * IN / 8));
    }

    @Test
    void addsOneKerfACut() {
        assertThat(FRAME.mouldingLengthUm(3_000) - FRAME.mouldingLengthUm(0)).isEqualTo(4 * 3_000);
    }

    @Test
    void showsTheArtworkBetweenTheLips() {
        assertThat(inches(FRAME.sightWidthUm())).isEqualTo("15 5/8");
        assertThat(inches(FRAME.sightHeightUm())).isEqualTo("19 5/8");
    }

    // United inches = W + H. An allowance of 1/8 in, 3.175 mm, is common practice, no published source.
    @Test
    void addsWidthAndHeight_inUnitedInches() {
        assertThat(FRAME.unitedInches()).isEqualTo(36);
        assertThat(new FrameSums(350_000, 450_000, 0, 20_000, 5_000).unitedInches())
                .isCloseTo(31.496, within(5e-4));
        assertThat(FrameSums.USUAL_ALLOWANCE_UM).isEqualTo(3_175);
    }

    // EN 572-1: 2500 kg/m3, so glass of 2 mm 5.0 kg/m2. ISO 7823-1, from memory: 1190 kg/m3, so acrylic of 2 mm 2.38
    // kg/m2.
    @Test
    void weighsGlazing() {
        assertThat(Glazing.GLASS.massKg(1_000_000, 1_000_000, 2_000)).isCloseTo(5.0, within(1e-9));
        assertThat(Glazing.ACRYLIC.massKg(1_000_000, 1_000_000, 2_000)).isCloseTo(2.38, within(1e-9));
        assertThat(Glazing.areaM2(400_000, 600_000)).isCloseTo(0.24, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({
        "498475, 8, 19 5/8, true",
        "25400, 16, 1, true",
        "0, 8, 0, true",
        "4762, 16, 3/16, false",
        "25399, 16, 1, false",
        "38100, 64, 1 1/2, true",
        "1587, 8, 0, false",
        "1588, 8, 1/8, false",
    })
    void writesInchesAsTheTradeDoes(long lengthUm, int finest, String text, boolean exact) {
        assertThat(Inches.nearest(lengthUm, finest).text()).isEqualTo(text);
        assertThat(Inches.nearest(lengthUm, finest).exact()).isEqualTo(exact);
    }

    @Test
    void refusesWhatCannotBeAFrame() {
        assertThatThrownBy(() -> new FrameSums(0, 1, 0, 1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new FrameSums(1, 1, -1, 1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new FrameSums(1, 1, 0, 1, 2)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new FrameSums(Long.MAX_VALUE, 1, 0, 1, 0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Inches.nearest(1, 10)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Inches.nearest(-1, 8)).isInstanceOf(IllegalArgumentException.class);
    }

    private static String inches(long um) {
        Inches inches = Inches.nearest(um, 16);
        assertThat(inches.exact()).isTrue();
        return inches.text();
    }
}
