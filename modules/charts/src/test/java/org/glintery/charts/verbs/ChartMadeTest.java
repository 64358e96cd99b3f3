package org.glintery.charts.verbs;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.glintery.api.charts.ChartFigures;
import org.glintery.api.charts.ChartLine;
import org.glintery.charts.ChartSupply;
import org.junit.jupiter.api.Test;

class ChartMadeTest {

    private static List<String> lines(int colours, long drills, long bags, double grams) {
        return new ChartMade(
                        1_200,
                        40,
                        2.5,
                        3_000,
                        100,
                        new ChartSupply(drills, bags, grams, Optional.empty()),
                        new ChartFigures(0, 0, 0, 0, 0),
                        Collections.nCopies(colours, new ChartLine("A", "T1", "#102030", drills)),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        List.of())
                .text()
                .lines()
                .toList();
    }

    @Test
    void thousandsAreSetApart_whateverTheLocale() {
        assertThat(lines(1_001, 48_000, 1_240, 4_800))
                .startsWith(
                        "1\u2009200 x 40 cells, 300.0 x 10.0 cm, 1\u2009001 colours.",
                        "48\u2009000 drills, 1\u2009240 bags, about 4\u2009800 g.");
    }

    @Test
    void oneIsNotSeveral_andNoneIsNotOne() {
        assertThat(lines(1, 1, 1, 0))
                .startsWith("1\u2009200 x 40 cells, 300.0 x 10.0 cm, one colour.", "One drill, one bag, about 0 g.");
        assertThat(lines(0, 0, 0, 0))
                .startsWith("1\u2009200 x 40 cells, 300.0 x 10.0 cm, no colour.", "No drill, no bag, about 0 g.");
    }
}
