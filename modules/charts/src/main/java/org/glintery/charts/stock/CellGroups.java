package org.glintery.charts.stock;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.glintery.charts.picture.LightGrid;
import org.glintery.charts.shading.DrillColours;
import org.glintery.charts.shading.LabGrid;
import org.glintery.planning.transport.Costs;

/** Cells of the same colour, or where these are too many of nearly the same, as one. Not changed once made; any thread. */
final class CellGroups {

    private static final double FINEST_BOX = 0.5;
    private static final double COARSER = 1.3;

    /** The group of each cell; -1 for a blank one. */
    final int[] of;

    final int[] cells;
    /** Whether all cells of a group are of the very same colour. */
    final boolean exact;

    private final double[] l;
    private final double[] a;
    private final double[] b;

    private record Box(long l, long a, long b) {}

    private CellGroups(int[] of, int size, LabGrid lab, boolean exact) {
        this.of = of;
        this.exact = exact;
        cells = new int[size];
        l = new double[size];
        a = new double[size];
        b = new double[size];
        for (int cell = 0; cell < of.length; cell++) {
            if (of[cell] >= 0) {
                // a running mean, which stays at the very colour where all are the same
                int group = of[cell];
                cells[group]++;
                l[group] += (lab.l(cell) - l[group]) / cells[group];
                a[group] += (lab.a(cell) - a[group]) / cells[group];
                b[group] += (lab.b(cell) - b[group]) / cells[group];
            }
        }
    }

    /** By the very colour if that gives few enough groups, else by boxes as fine as may be. */
    static CellGroups of(LightGrid grid, LabGrid lab, int most) {
        Optional<CellGroups> groups = grouped(grid, lab, 0, most);
        for (double box = FINEST_BOX; groups.isEmpty(); box *= COARSER) {
            groups = grouped(grid, lab, box, most);
        }
        return groups.get();
    }

    private static Optional<CellGroups> grouped(LightGrid grid, LabGrid lab, double box, int most) {
        Map<Box, Integer> places = new HashMap<>();
        int[] of = new int[grid.cells()];
        for (int cell = 0; cell < of.length; cell++) {
            if (grid.isBlank(cell)) {
                of[cell] = -1;
            } else {
                of[cell] = places.computeIfAbsent(box(lab, cell, box), key -> places.size());
                if (places.size() > most) {
                    return Optional.empty();
                }
            }
        }
        return Optional.of(new CellGroups(of, places.size(), lab, box == 0));
    }

    private static Box box(LabGrid lab, int cell, double box) {
        return new Box(side(lab.l(cell), box), side(lab.a(cell), box), side(lab.b(cell), box));
    }

    private static long side(double value, double box) {
        return box == 0 ? Double.doubleToLongBits(value) : (long) Math.floor(value / box);
    }

    int size() {
        return cells.length;
    }

    /** What a drill is off in a cell of a group. */
    Costs off(DrillColours colours) {
        return (group, drill) -> colours.difference(drill, l[group], a[group], b[group]);
    }

    /** The drill that is nearest to a group. */
    int nearest(DrillColours colours, int group) {
        return colours.nearest(l[group], a[group], b[group]);
    }
}
