package org.glintery.charts.palette;

import java.util.HashMap;
import java.util.Map;
import org.glintery.charts.picture.LightGrid;
import org.glintery.charts.shading.LabGrid;

/** The colours of a grid's cells in few groups of nearly the same colour, each with its middle and its number of cells. */
final class ColourCrowd {

    private static final int MOST_GROUPS = 3000;
    private static final double FINEST_BOX = 1;

    final double[] l;
    final double[] a;
    final double[] b;
    final double[] cells;

    private ColourCrowd(Map<Long, double[]> groups) {
        l = new double[groups.size()];
        a = new double[groups.size()];
        b = new double[groups.size()];
        cells = new double[groups.size()];
        int at = 0;
        for (double[] sums : groups.values()) {
            cells[at] = sums[3];
            l[at] = sums[0] / sums[3];
            a[at] = sums[1] / sums[3];
            b[at] = sums[2] / sums[3];
            at++;
        }
    }

    /** As finely divided as goes with few groups. */
    static ColourCrowd of(LightGrid grid, LabGrid lab) {
        double box = FINEST_BOX;
        Map<Long, double[]> groups = grouped(grid, lab, box);
        while (groups.size() > MOST_GROUPS) {
            box *= 1.3;
            groups = grouped(grid, lab, box);
        }
        return new ColourCrowd(groups);
    }

    private static Map<Long, double[]> grouped(LightGrid grid, LabGrid lab, double box) {
        Map<Long, double[]> groups = new HashMap<>();
        for (int cell = 0; cell < grid.cells(); cell++) {
            if (!grid.isBlank(cell)) {
                long atL = (long) Math.floor(lab.l(cell) / box);
                long atA = (long) Math.floor(lab.a(cell) / box);
                long atB = (long) Math.floor(lab.b(cell) / box);
                double[] sums = groups.computeIfAbsent((atL << 40) + (atA << 20) + atB, key -> new double[4]);
                sums[0] += lab.l(cell);
                sums[1] += lab.a(cell);
                sums[2] += lab.b(cell);
                sums[3]++;
            }
        }
        return groups;
    }

    int size() {
        return cells.length;
    }
}
