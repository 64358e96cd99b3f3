package org.glintery.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class Ciede2000Test {

    // Sharma, Wu, Dalal, Color Res. Appl. 30(1):21-30, 2005, table 1: four decimals, both ways round.
    @Test
    void givesThePublishedDifferences_forAllPairs() throws IOException {
        List<String[]> rows = CsvRows.of("ciede2000_sharma34.csv");
        for (String[] row : rows) {
            Lab first = lab(row, 1);
            Lab second = lab(row, 4);
            double expected = Double.parseDouble(row[7]);
            assertThat(Ciede2000.difference(first, second)).as("pair " + row[0]).isCloseTo(expected, within(5e-5));
            assertThat(Ciede2000.difference(second, first)).as("pair " + row[0]).isCloseTo(expected, within(5e-5));
        }
        assertThat(rows).hasSize(34);
    }

    @Test
    void isNoneForEqualColoursAndSymmetric_forRandomColours() {
        long seed = 11;
        Random random = new Random(seed);
        for (int i = 0; i < 20_000; i++) {
            Lab one = Srgb.ofRgb(random.nextInt()).lab();
            Lab other = Srgb.ofRgb(random.nextInt()).lab();
            double difference = Ciede2000.difference(one, other);
            assertThat(difference)
                    .as("seed %d, %s %s", seed, one, other)
                    .isNotNegative()
                    .isCloseTo(Ciede2000.difference(other, one), within(1e-9));
            assertThat(Ciede2000.difference(one, one)).isZero();
        }
    }

    private static Lab lab(String[] row, int at) {
        return new Lab(Double.parseDouble(row[at]), Double.parseDouble(row[at + 1]), Double.parseDouble(row[at + 2]));
    }
}
