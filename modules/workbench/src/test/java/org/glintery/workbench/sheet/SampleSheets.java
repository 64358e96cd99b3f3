package org.glintery.workbench.sheet;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.glintery.api.ledger.Body;
import org.glintery.api.ledger.Coating;
import org.glintery.api.ledger.Shape;
import org.glintery.workbench.parts.DrillLook;

/** Charts of random cells. */
final class SampleSheets {
    private SampleSheets() {}

    /** Random lines, one cell in nine without a drill. */
    static SheetCells cells(Random random, int columns, int rows, int lines) {
        short[] cells = new short[columns * rows];
        for (int i = 0; i < cells.length; i++) {
            cells[i] = (short) (random.nextInt(9) == 0 ? SheetCells.NO_DRILL : random.nextInt(lines));
        }
        return SheetCells.of(columns, rows, cells);
    }

    static List<LineLook> looks(Random random, int lines) {
        List<LineLook> looks = new ArrayList<>();
        for (int i = 0; i < lines; i++) {
            Color colour = new Color(random.nextInt(0x1000000));
            looks.add(new LineLook(
                    new DrillLook(Shape.ROUND, Body.RESIN, Coating.NONE, Optional.of(colour), false),
                    Character.toString('A' + i % 26)));
        }
        return looks;
    }

    static int[] rgb(List<LineLook> looks) {
        return looks.stream()
                .mapToInt(look -> look.drill().colour().orElseThrow().getRGB() & 0xFFFFFF)
                .toArray();
    }
}
