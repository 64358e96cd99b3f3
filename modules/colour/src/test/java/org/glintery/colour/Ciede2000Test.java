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

    @Test
    void agreesWithTheFormulaInAngles_forRandomAndForNearlyOppositeHues() {
        long seed = 12;
        Random random = new Random(seed);
        for (int i = 0; i < 300_000; i++) {
            Lab one = anywhere(random);
            Lab other = i % 3 == 0 ? nearlyOpposite(one, random) : anywhere(random);
            assertThat(Ciede2000.difference(one, other))
                    .as("seed %d, %s %s", seed, one, other)
                    .isCloseTo(AngularCiede2000.difference(one, other), within(1e-7));
        }
    }

    private static Lab anywhere(Random random) {
        return new Lab(100 * random.nextDouble(), 250 * random.nextDouble() - 125, 250 * random.nextDouble() - 125);
    }

    /** Exactly opposite hues are left out: there the formula jumps, and rounding says to which side. */
    private static Lab nearlyOpposite(Lab colour, Random random) {
        double share = -random.nextDouble();
        double turn = (random.nextBoolean() ? 1 : -1) * Math.pow(10, -5 * random.nextDouble());
        return new Lab(
                100 * random.nextDouble(),
                share * (colour.a() - turn * colour.b()),
                share * (colour.b() + turn * colour.a()));
    }

    private static Lab lab(String[] row, int at) {
        return new Lab(Double.parseDouble(row[at]), Double.parseDouble(row[at + 1]), Double.parseDouble(row[at + 2]));
    }
}
