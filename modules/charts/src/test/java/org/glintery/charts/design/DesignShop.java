package org.glintery.charts.design;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import org.glintery.api.charts.Chart;
import org.glintery.api.charts.ChartLine;
import org.glintery.api.charts.Design;
import org.glintery.api.charts.DesignCells;
import org.glintery.api.charts.DesignLine;
import org.glintery.api.charts.Designs;
import org.glintery.api.charts.Grid;
import org.glintery.api.charts.NewDesign;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Shape;
import org.glintery.api.workshop.Workshop;
import org.glintery.testkit.ShopInFolder;

/** A real workshop in a folder with all features that are there, and the designs that tests share. */
public final class DesignShop extends ShopInFolder {

    public static final UUID ID = new UUID(3, 3);

    private DesignShop(Workshop workshop) {
        super(workshop);
    }

    public static DesignShop at(Path folder) {
        return new DesignShop(made(folder));
    }

    /** The same workshop, closed and opened again. */
    public DesignShop reopened() {
        Path folder = workshop().folder();
        workshop().close();
        return new DesignShop(workshops().open(folder).orThrow());
    }

    public Designs designs() {
        return workshop().find(Designs.class).orElseThrow();
    }

    public DesignCells cells() {
        return DesignCells.of(view(), ID).orElseThrow();
    }

    public static DesignLine line(String symbol, String code) {
        return new DesignLine(symbol, Drill.of(Shape.SQUARE, 250, "own", code), "#102030");
    }

    /** Lines A, B, C ... of codes C0, C1, C2 ... */
    public static List<DesignLine> lines(int count) {
        List<DesignLine> lines = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            lines.add(line(Character.toString('A' + i % 26) + (i < 26 ? "" : i / 26), "C" + i));
        }
        return lines;
    }

    /** Random cells, one in ten without a drill. */
    public static NewDesign random(long seed, int columns, int rows, int lines) {
        Random random = new Random(seed);
        int[] cells = new int[columns * rows];
        for (int i = 0; i < cells.length; i++) {
            cells[i] = random.nextInt(10) == 0 ? Chart.NO_DRILL : random.nextInt(lines);
        }
        return of("Rope-walk", columns, lines, cells);
    }

    public static NewDesign of(String title, int columns, int lines, int... cells) {
        Grid grid = new Grid(columns, cells.length / columns, 2.5);
        List<ChartLine> chartLines = lines(lines).stream()
                .map(line -> new ChartLine(line.symbol(), line.drill().code(), line.hex(), 0))
                .toList();
        return new NewDesign(
                new Design(title, Optional.empty(), grid, lines(lines), Optional.empty()),
                DesignCells.of(new Chart(grid, chartLines, cells)),
                Optional.empty());
    }

    public static BitSet set(int... cells) {
        BitSet set = new BitSet();
        for (int cell : cells) {
            set.set(cell);
        }
        return set;
    }

    public static BitSet range(int from, int to) {
        BitSet set = new BitSet();
        set.set(from, to);
        return set;
    }
}
