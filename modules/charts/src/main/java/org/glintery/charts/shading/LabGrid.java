package org.glintery.charts.shading;

import java.util.stream.IntStream;
import org.glintery.charts.picture.LightGrid;
import org.glintery.colour.Lab;

/** The colours of a grid's cells in Lab, row after row. Not changed once it is made; any thread. */
public final class LabGrid {

    final double[] l;
    final double[] a;
    final double[] b;
    final double[] chroma;

    private LabGrid(int cells) {
        l = new double[cells];
        a = new double[cells];
        b = new double[cells];
        chroma = new double[cells];
    }

    /** Blank cells have a colour that means nothing. */
    public static LabGrid of(LightGrid grid) {
        LabGrid colours = new LabGrid(grid.cells());
        IntStream.range(0, grid.rows()).parallel().forEach(row -> {
            double[] lab = new double[3];
            for (int cell = row * grid.columns(); cell < (row + 1) * grid.columns(); cell++) {
                LabConversion.of(grid.red(cell), grid.green(cell), grid.blue(cell), lab);
                colours.l[cell] = lab[0];
                colours.a[cell] = lab[1];
                colours.b[cell] = lab[2];
                colours.chroma[cell] = Math.sqrt(lab[1] * lab[1] + lab[2] * lab[2]);
            }
        });
        return colours;
    }

    public Lab colour(int cell) {
        return new Lab(l[cell], a[cell], b[cell]);
    }

    public double l(int cell) {
        return l[cell];
    }

    public double a(int cell) {
        return a[cell];
    }

    public double b(int cell) {
        return b[cell];
    }
}
