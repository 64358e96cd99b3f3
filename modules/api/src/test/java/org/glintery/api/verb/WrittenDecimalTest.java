package org.glintery.api.verb;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WrittenDecimalTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "24.90|24.90",
                "24,90|24.90",
                " 5 |5",
                "0,500|0.500",
                "12.345|12.345",
                "1,2340|1.2340",
                "1234,5|1234.5",
                "-2.5|-2.5",
                ".5|.5",
                "5.|5",
                "1 234|1234",
                "1\u2009234,5|1234.5"
            })
    void readsPointsAndCommas(String written, BigDecimal meant) {
        assertThat(WrittenDecimal.of(written)).contains(meant);
        assertThat(WrittenDecimal.doubt("width", written)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "x", "NaN", "Infinity", "1e3", "0x10", "1.2.3", "1,234,567", "1 23", "12,5mm", "--1"})
    void isNoNumber(String written) {
        assertThat(WrittenDecimal.of(written)).isEmpty();
        assertThat(WrittenDecimal.ofMoney(written)).isEmpty();
        assertThat(WrittenDecimal.doubt("width", written)).isEmpty();
    }

    @Test
    void namesBothReadings_whereThereAreTwo() {
        assertThat(WrittenDecimal.of("1,234")).isEmpty();
        assertThat(WrittenDecimal.doubt("width", "1,234"))
                .contains("--width '1,234' can be read as 1.234 or as 1234. Write 1.2340 or 1234.");
        for (String way : new String[] {"1.2340", "1234"}) {
            assertThat(WrittenDecimal.ofMoney(way)).contains(new BigDecimal(way));
        }
    }

    @Test
    void takesAPointOfMoneyForDoubtfulToo() {
        assertThat(WrittenDecimal.ofMoney("1.234")).isEmpty();
        assertThat(WrittenDecimal.doubtOfMoney("price", "1.234"))
                .contains("--price '1.234' can be read as 1.234 or as 1234. Write 1.2340 or 1234.");
        assertThat(WrittenDecimal.ofMoney("0.125")).contains(new BigDecimal("0.125"));
    }
}
