package org.glintery.planning.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;

/** Programs of lanes and links, so small that all whole solutions can be tried. */
final class SmallPrograms {

    final int lanes;
    final int[] least;
    final int[] most;
    final int[] linkOf;
    final long[] charges;
    final List<SumRow> conditions = new ArrayList<>();

    SmallPrograms(Random random) {
        lanes = 2 + random.nextInt(4);
        int links = 1 + random.nextInt(3);
        least = new int[lanes + links];
        most = new int[lanes + links];
        linkOf = new int[lanes + links];
        charges = new long[lanes + links];
        for (int lane = 0; lane < lanes; lane++) {
            most[lane] = 1 + random.nextInt(3);
            linkOf[lane] = random.nextInt(5) == 0 ? -1 : lanes + random.nextInt(links);
        }
        for (int link = lanes; link < lanes + links; link++) {
            most[link] = 1;
            linkOf[link] = -1;
            charges[link] = 1 + random.nextInt(4);
        }
        for (int row = 1 + random.nextInt(3); row > 0; row--) {
            int[] columns = random.ints(0, lanes)
                    .distinct()
                    .limit(1 + random.nextInt(lanes))
                    .toArray();
            int[] weights = new int[columns.length];
            java.util.Arrays.setAll(weights, k -> random.nextInt(4) == 0 ? -1 : 1);
            long low = random.nextInt(5) - 1;
            conditions.add(new SumRow(columns, weights, low, low + random.nextInt(3)).within(least, most));
        }
    }

    /** That a lane with a link needs it. */
    List<SumRow> needs() {
        List<SumRow> needs = new ArrayList<>();
        for (int lane = 0; lane < lanes; lane++) {
            if (linkOf[lane] >= 0) {
                needs.add(new SumRow(new int[] {lane, linkOf[lane]}, new int[] {1, -most[lane]}, Long.MIN_VALUE, 0)
                        .within(least, most));
            }
        }
        return needs;
    }

    /** Calls with every whole solution. */
    void solutions(Consumer<double[]> each) {
        List<SumRow> all = new ArrayList<>(conditions);
        all.addAll(needs());
        fill(new double[most.length], 0, all, each);
    }

    private void fill(double[] values, int column, List<SumRow> rows, Consumer<double[]> each) {
        if (column == values.length) {
            if (rows.stream().allMatch(row -> row.at(values) >= row.low() && row.at(values) <= row.high())) {
                each.accept(values);
            }
            return;
        }
        for (int value = least[column]; value <= most[column]; value++) {
            values[column] = value;
            fill(values, column + 1, rows, each);
        }
    }

    long charge(double[] values) {
        long sum = 0;
        for (int column = 0; column < values.length; column++) {
            sum += charges[column] * (long) values[column];
        }
        return sum;
    }
}
