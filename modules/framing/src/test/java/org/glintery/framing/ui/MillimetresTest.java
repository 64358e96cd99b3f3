package org.glintery.framing.ui;

import static org.assertj.core.api.Assertions.assertThat;

import org.glintery.api.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MillimetresTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"12.5 | 12.5", "'12,5' | 12.5", "400 mm | 400", " 3 | 3"})
    void readsLengths_withPointOrComma(String typed, double mm) {
        assertThat(Millimetres.read(typed).orThrow()).contains(mm);
    }

    @Test
    void nothingTypedIsNotZero() {
        assertThat(Millimetres.read("  ").orThrow()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"wide", "-3", "1e5", "1 000 000", "100000", "NaN"})
    void refusesWhatIsNoLength(String typed) {
        assertThat(Millimetres.read(typed)).isInstanceOf(Result.Refused.class);
    }

    @Test
    void doesNotGuess_whetherACommaSetsThousandsApart() {
        Result<?> read = Millimetres.read("1,234 mm");

        assertThat(((Result.Refused<?>) read).refusal().text())
                .isEqualTo("1,234 can be read as 1.234 or as 1234 millimetres. Write 1.2340 or 1234.");
        assertThat(Millimetres.read("1.234").orThrow()).contains(1.234);
    }

    @ParameterizedTest
    @CsvSource({"451.2, 451.2", "600, 600", "0.04, 0", "498.4749999, 498.5"})
    void showsTenthsWhereThereAreAny(double mm, String words) {
        assertThat(Millimetres.words(mm)).isEqualTo(words);
    }
}
