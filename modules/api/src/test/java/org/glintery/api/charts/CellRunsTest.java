package org.glintery.api.charts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CellRunsTest {

    @Test
    void writesRunsThatPeopleCanRead() {
        assertThat(CellRuns.ofLines(new short[] {3, 3, 3, -1, 0, -1, -1, 999}, 0, 8))
                .isEqualTo("3*3 - 0 -*2 999");
        BitSet laid = new BitSet();
        laid.set(14);
        laid.set(20, 33);
        assertThat(CellRuns.ofColumns(laid, 10, 30)).isEqualTo("4 10-19");
        assertThat(CellRuns.ofColumns(laid, 40, 50)).isEmpty();
    }

    @Test
    void readsBackWhatItWrote() {
        for (long seed = 0; seed < 50; seed++) {
            Random random = new Random(seed);
            short[] cells = new short[1 + random.nextInt(300)];
            BitSet laid = new BitSet();
            int alike = 1 + random.nextInt(9);
            for (int i = 0; i < cells.length; i++) {
                cells[i] = i % alike != 0 && i > 0 ? cells[i - 1] : (short) (random.nextInt(1_001) - 1);
                laid.set(i, random.nextInt(alike + 1) > 0);
            }
            List<Integer> lines = new ArrayList<>();
            CellRuns.readLines(CellRuns.ofLines(cells, 0, cells.length), (line, count) -> {
                for (int i = 0; i < count; i++) {
                    lines.add(line);
                }
            });
            BitSet marked = new BitSet();
            CellRuns.readColumns(
                    CellRuns.ofColumns(laid, 0, cells.length), (first, last) -> marked.set(first, last + 1));
            assertThat(lines).as("seed %d", seed).hasSize(cells.length);
            for (int i = 0; i < cells.length; i++) {
                assertThat(lines.get(i)).as("seed %d", seed).isEqualTo((int) cells[i]);
            }
            assertThat(marked).as("seed %d", seed).isEqualTo(laid);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"x", "3*", "*3", "3  4", " 3", "3 ", "--", "3*12*2", "1000", "3*99999999999", "-5", "3;4"})
    void refusesOtherText(String text) {
        assertThatThrownBy(() -> new CellBand(new UUID(1, 1), 0, List.of("0", text)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("not a row of cells at sign ");
    }

    @ParameterizedTest
    @ValueSource(strings = {"x", "-", "3-", "3 -4", "3--4", "99999999"})
    void refusesOtherColumns(String text) {
        assertThatThrownBy(() -> new LaidBand(new UUID(1, 1), 0, List.of(text)))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
