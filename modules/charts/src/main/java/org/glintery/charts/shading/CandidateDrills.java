package org.glintery.charts.shading;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.glintery.charts.picture.LightGrid;
import org.glintery.colour.Ciede2000;

/**
 * The drills that come into question for each cell: all, or the nearest ones of a large card, with what each would be off
 * there. Cells of nearly the same colour share a list. Not changed once it is made; any thread.
 */
final class CandidateDrills {

    /** In Lab; colours in one box share the list of its middle. */
    private static final double BOX = 4;

    private final int[][] lists;
    private final float[] squared;
    private final int count;

    /** @param most how many at most for a cell */
    CandidateDrills(LightGrid wanted, LabGrid lab, DrillColours colours, int most) {
        count = Math.min(most, colours.size());
        lists = new int[wanted.cells()][];
        squared = new float[wanted.cells() * count];
        Map<Long, int[]> byBox = new ConcurrentHashMap<>();
        IntStream.range(0, wanted.rows()).parallel().forEach(row -> {
            for (int cell = row * wanted.columns(); cell < (row + 1) * wanted.columns(); cell++) {
                if (!wanted.isBlank(cell)) {
                    lists[cell] = list(byBox, colours, lab, cell);
                    for (int place = 0; place < count; place++) {
                        double difference = colours.difference(lists[cell][place], lab, cell);
                        squared[cell * count + place] = (float) (difference * difference);
                    }
                }
            }
        });
    }

    private int[] list(Map<Long, int[]> byBox, DrillColours colours, LabGrid lab, int cell) {
        long l = (long) Math.floor(lab.l[cell] / BOX);
        long a = (long) Math.floor(lab.a[cell] / BOX);
        long b = (long) Math.floor(lab.b[cell] / BOX);
        return byBox.computeIfAbsent(
                (l << 40) + (a << 20) + b, key -> nearest(colours, (l + 0.5) * BOX, (a + 0.5) * BOX, (b + 0.5) * BOX));
    }

    private int[] nearest(DrillColours colours, double l, double a, double b) {
        double chroma = Math.sqrt(a * a + b * b);
        double[] difference = new double[colours.size()];
        for (int drill = 0; drill < difference.length; drill++) {
            difference[drill] = Ciede2000.difference(
                    l, a, b, chroma, colours.l[drill], colours.a[drill], colours.b[drill], colours.chroma[drill]);
        }
        return IntStream.range(0, difference.length)
                .boxed()
                .sorted((one, other) -> Double.compare(difference[one], difference[other]))
                .limit(count)
                .mapToInt(Integer::intValue)
                .toArray();
    }

    /** None for a blank cell. */
    int[] of(int cell) {
        return lists[cell];
    }

    /** The square of CIEDE2000 between the drill at a place of the cell's list and what the cell should look like. */
    double squared(int cell, int place) {
        return squared[cell * count + place];
    }
}
