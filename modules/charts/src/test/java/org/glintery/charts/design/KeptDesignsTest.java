package org.glintery.charts.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.glintery.charts.design.DesignShop.ID;
import static org.glintery.charts.design.DesignShop.range;
import static org.glintery.charts.design.DesignShop.set;

import java.nio.file.Path;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import org.glintery.api.charts.CellBand;
import org.glintery.api.charts.Chart;
import org.glintery.api.charts.Design;
import org.glintery.api.charts.DesignCells;
import org.glintery.api.charts.LaidBand;
import org.glintery.api.charts.LineNeed;
import org.glintery.api.charts.NewDesign;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Operation;
import org.glintery.api.workshop.Workshop;
import org.glintery.testkit.ShopInFolder;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeptDesignsTest {

    @TempDir
    Path temp;

    private DesignShop shop;

    @BeforeEach
    void open() {
        shop = DesignShop.at(temp);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private NewDesign kept(NewDesign design) {
        shop.apply(shop.designs().keep(shop.view(), ID, design));
        return design;
    }

    private static long puts(ChangeSet change) {
        return change.operations().stream()
                .filter(Operation.Put.class::isInstance)
                .count();
    }

    @Test
    void readsBackEveryCell_afterClosingAndThroughAnExport() {
        NewDesign made = kept(DesignShop.random(5, 173, 211, 40));
        shop.apply(shop.designs().mark(shop.view(), ID, range(1_000, 9_000), true));
        DesignCells expected = made.cells().marked(range(1_000, 9_000), true);

        shop = shop.reopened();
        assertThat(shop.cells()).isEqualTo(expected);
        Path export = temp.resolve("export.json");
        shop.workshop().exportJson(export).orThrow();
        try (DesignShop other = DesignShop.at(temp.resolve("other"))) {
            other.workshop().importJson(export).orThrow();
            assertThat(other.cells()).isEqualTo(expected);
            assertThat(other.view().contentDigest()).isEqualTo(shop.view().contentDigest());
        }
    }

    @Test
    void writesOneSmallDocument_forAStrokeOnALargeChart() {
        kept(DesignShop.random(6, 400, 300, 200));
        ChangeSet stroke =
                shop.designs().paint(shop.view(), ID, range(50_000, 50_030), 7).orThrow();
        assertThat(puts(stroke)).isEqualTo(1);
        assertThat(shop.view().all(CellBand.TYPE))
                .hasSize(15)
                .allSatisfy(
                        band -> assertThat(String.join("", band.value().rows()).length())
                                .isLessThan(48_000));

        ChangeSet mark =
                shop.designs().mark(shop.view(), ID, range(7_990, 8_010), true).orThrow();
        assertThat(puts(mark)).as("on both sides of a border").isEqualTo(2);
    }

    /** The same strokes on a plain array: cells, laid cells and counts are as there, after each of them and after undo. */
    @Test
    void isAsAPlainArray_throughStrokesMarksSwapsAndUndo() {
        long seed = 20_250_502;
        Random random = new Random(seed);
        NewDesign made = kept(DesignShop.random(seed, 97, 130, 12));
        int count = made.cells().count();
        int[] lines = new int[count];
        boolean[] laid = new boolean[count];
        for (int cell = 0; cell < count; cell++) {
            lines[cell] = made.cells().line(cell);
        }
        for (int turn = 0; turn < 60; turn++) {
            BitSet cells = new BitSet();
            int start = random.nextInt(count);
            cells.set(start, Math.min(count, start + random.nextInt(3_000)));
            cells.and(sieve(random, count));
            int line = random.nextInt(13) - 1;
            int[] linesBefore = lines.clone();
            boolean[] laidBefore = laid.clone();
            DesignCells before = shop.cells();
            switch (turn % 3) {
                case 0 -> {
                    shop.apply(shop.designs().paint(shop.view(), ID, cells, line));
                    cells.stream().filter(c -> lines[c] != line).forEach(c -> put(lines, laid, c, line));
                }
                case 1 -> {
                    boolean on = random.nextInt(3) > 0;
                    shop.apply(shop.designs().mark(shop.view(), ID, cells, on));
                    cells.stream().filter(c -> lines[c] >= 0).forEach(c -> laid[c] = on);
                }
                default -> {
                    int from = random.nextInt(12);
                    int to = (from + 1 + random.nextInt(11)) % 12;
                    shop.apply(shop.designs().swap(shop.view(), ID, cells, from, to));
                    cells.stream().filter(c -> lines[c] == from).forEach(c -> put(lines, laid, c, to));
                }
            }
            assertSame(seed, lines, laid);
            if (turn % 7 == 3 && !before.equals(shop.cells())) {
                shop.workshop().undo().orThrow();
                assertThat(shop.cells()).as("seed %d", seed).isEqualTo(before);
                System.arraycopy(linesBefore, 0, lines, 0, count);
                System.arraycopy(laidBefore, 0, laid, 0, count);
            }
        }
        assertThat(shop.workshop().check().problems()).isEmpty();
    }

    private static BitSet sieve(Random random, int count) {
        BitSet sieve = new BitSet();
        for (int i = 0; i < count; i++) {
            sieve.set(i, random.nextInt(4) > 0);
        }
        return sieve;
    }

    private static void put(int[] lines, boolean[] laid, int cell, int line) {
        lines[cell] = line;
        laid[cell] = false;
    }

    private void assertSame(long seed, int[] lines, boolean[] laid) {
        DesignCells cells = shop.cells();
        long[] drills = new long[12];
        long[] laidDrills = new long[12];
        for (int cell = 0; cell < lines.length; cell++) {
            assertThat(cells.line(cell)).as("seed %d, cell %d", seed, cell).isEqualTo(lines[cell]);
            assertThat(cells.isLaid(cell)).as("seed %d, cell %d", seed, cell).isEqualTo(laid[cell]);
            if (lines[cell] >= 0) {
                drills[lines[cell]]++;
                laidDrills[lines[cell]] += laid[cell] ? 1 : 0;
            }
        }
        List<LineNeed> needs = shop.designs().needs(shop.view(), ID);
        for (int line = 0; line < 12; line++) {
            assertThat(needs.get(line).drills()).isEqualTo(drills[line]);
            assertThat(needs.get(line).laid()).isEqualTo(laidDrills[line]);
        }
    }

    @Test
    void saysThatLaidDrillsAreToBeLifted_andCountsThemAsNotLaid() {
        kept(DesignShop.of("Crane", 4, 2, 0, 0, 1, 1, 0, 0, 1, 1));
        shop.apply(shop.designs().mark(shop.view(), ID, range(0, 3), true));
        assertThat(shop.apply(shop.designs().paint(shop.view(), ID, range(0, 4), 1)))
                .containsExactly(
                        "2 of these cells are laid already. Lift their drills first; they now count as not laid.");
        assertThat(shop.cells().laid()).isEqualTo(set(2));
        assertThat(shop.apply(shop.designs().paint(shop.view(), ID, range(0, 4), Chart.NO_DRILL)))
                .containsExactly(
                        "One of these cells is laid already. Lift its drill first; it now counts as not laid.");
        assertThat(shop.view().all(LaidBand.TYPE)).isEmpty();
    }

    @Test
    void changesNothing_whereNothingWouldBeOtherwise() {
        kept(DesignShop.of("Crane", 4, 2, 0, 0, 1, 1));
        for (ChangeSet change : List.of(
                shop.designs().paint(shop.view(), ID, set(0, 1), 0).orThrow(),
                shop.designs().mark(shop.view(), ID, set(0), false).orThrow(),
                shop.designs().swap(shop.view(), ID, set(0, 1), 1, 0).orThrow(),
                shop.designs()
                        .edit(
                                shop.view(),
                                ID,
                                DesignShop.of("Crane", 4, 2, 0, 0, 1, 1).design())
                        .orThrow())) {
            assertThat(change.operations()).isEmpty();
        }
    }

    @Test
    void refusesWhatCantBe() {
        NewDesign made = kept(DesignShop.of("Crane", 4, 2, 0, 0, 1, 1));
        Design design = made.design();
        assertThat(code(shop.designs().paint(shop.view(), ID, set(4), 0))).isEqualTo("off-the-chart");
        assertThat(code(shop.designs().paint(shop.view(), ID, set(0), 2))).isEqualTo("no-line");
        assertThat(code(shop.designs().swap(shop.view(), ID, set(0), -1, 1))).isEqualTo("no-line");
        assertThat(code(shop.designs().mark(shop.view(), new UUID(9, 9), set(0), true)))
                .isEqualTo("no-design");
        assertThat(code(shop.designs().keep(shop.view(), ID, made))).isEqualTo("already-there");
        assertThat(code(shop.designs().edit(shop.view(), ID, design.withTitle(" "))))
                .isEqualTo("no-title");
        assertThat(code(shop.designs().edit(shop.view(), ID, design.withLines(DesignShop.lines(1)))))
                .isEqualTo("fewer-lines");
        assertThat(code(shop.designs().edit(shop.view(), ID, design.withPiece(Optional.of(new UUID(8, 8))))))
                .isEqualTo("no-piece");
        NewDesign unfit = new NewDesign(design.withLines(DesignShop.lines(1)), made.cells(), Optional.empty());
        assertThat(code(shop.designs().keep(shop.view(), new UUID(9, 9), unfit)))
                .isEqualTo("other-grid");
    }

    private static String code(org.glintery.api.Result<ChangeSet> result) {
        return ShopInFolder.refusal(result).code();
    }

    @Test
    void leavesNothing_whenItIsRemoved() {
        String before = shop.view().contentDigest();
        kept(DesignShop.random(7, 100, 200, 5));
        shop.apply(shop.designs().mark(shop.view(), ID, range(0, 15_000), true));
        shop.apply(shop.designs().remove(shop.view(), ID));
        assertThat(shop.view().contentDigest()).isEqualTo(before);
        shop.workshop().undo().orThrow();
        assertThat(shop.cells().laid().cardinality()).isGreaterThan(12_000);
    }

    @Test
    void opensAMillionCellsQuickly_andStrokesThemQuickly() {
        kept(DesignShop.random(8, 1_000, 1_000, 300));
        shop = shop.reopened();
        Workshop workshop = shop.workshop();
        long start = System.nanoTime();
        DesignCells cells = DesignCells.of(workshop.view(), ID).orElseThrow();
        long openedMs = (System.nanoTime() - start) / 1_000_000;
        assertThat(cells.count()).isEqualTo(1_000_000);
        start = System.nanoTime();
        shop.apply(shop.designs().paint(shop.view(), ID, range(500_000, 500_200), 9));
        DesignCells.of(workshop.view(), ID).orElseThrow();
        long strokeMs = (System.nanoTime() - start) / 1_000_000;
        // a cold start on a busy machine takes several times as long; what is quadratic would take minutes
        assertThat(openedMs).as("to open, in ms").isLessThan(5_000);
        assertThat(strokeMs).as("to stroke and read, in ms").isLessThan(3_000);
        System.out.println("a million cells: opened in " + openedMs + " ms, stroke in " + strokeMs + " ms");
    }
}
