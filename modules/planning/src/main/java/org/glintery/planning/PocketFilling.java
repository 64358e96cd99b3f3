package org.glintery.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.glintery.api.Preview;

/**
 * Which item goes into which pockets of a row: straightforward, in the order of the items, so that what stands in order
 * on a legend lies in order in the holder. Each item takes the next free pocket. Only when that one is too small does it
 * take the free neighbours after it as well, as many as it needs; where a taken pocket stands in the way, the next run of
 * free pockets is tried. What fits nowhere overflows whole, and the items after it go on where the last one ended. The
 * same input gives the same filling; it need not be the one with the fewest splits.
 */
@Preview(since = "1.0")
public final class PocketFilling {

    private PocketFilling() {}

    /**
     * A compartment, in the order in which the holder is filled.
     *
     * @param capacity in the unit of the items; empty when not known: such a pocket takes any one item
     */
    public record Pocket(boolean free, OptionalLong capacity) {}

    /**
     * What one pocket takes.
     *
     * @param pocket its place in the row, from 0
     * @param units empty when the amount of the item is not known
     */
    public record Fill(int pocket, OptionalLong units) {}

    /**
     * Where one item goes.
     *
     * @param item its place in the order, from 0
     * @param fills in the order of the pockets; empty when the item overflows
     */
    public record Placement(int item, List<Fill> fills) {
        public Placement {
            fills = List.copyOf(fills);
        }

        public boolean overflows() {
            return fills.isEmpty();
        }

        public boolean split() {
            return fills.size() > 1;
        }
    }

    /**
     * One placement for each item, in order.
     *
     * @param items how much room each needs: a count or a volume; empty when not known, which takes one pocket
     * @throws IllegalArgumentException for an item or a capacity of no or less than no room
     */
    public static List<Placement> fill(List<OptionalLong> items, List<Pocket> row) {
        items.forEach(PocketFilling::requireRoom);
        row.forEach(pocket -> requireRoom(pocket.capacity()));
        List<Placement> placements = new ArrayList<>();
        int next = 0;
        for (int item = 0; item < items.size(); item++) {
            List<Fill> fills = firstRoom(items.get(item), row, next);
            placements.add(new Placement(item, fills));
            if (!fills.isEmpty()) {
                next = fills.get(fills.size() - 1).pocket() + 1;
            }
        }
        return List.copyOf(placements);
    }

    private static void requireRoom(OptionalLong units) {
        if (units.isPresent() && units.getAsLong() <= 0) {
            throw new IllegalArgumentException("no room: " + units.getAsLong());
        }
    }

    private static List<Fill> firstRoom(OptionalLong needed, List<Pocket> row, int from) {
        int start = from;
        while (start < row.size()) {
            if (row.get(start).free()) {
                List<Fill> fills = run(needed, row, start);
                if (!fills.isEmpty()) {
                    return fills;
                }
                start = endOfRun(row, start);
            } else {
                start++;
            }
        }
        return List.of();
    }

    private static int endOfRun(List<Pocket> row, int start) {
        int end = start;
        while (end < row.size() && row.get(end).free()) {
            end++;
        }
        return end;
    }

    /** Fills free pockets from the start on; empty when they end before the item does. */
    private static List<Fill> run(OptionalLong needed, List<Pocket> row, int start) {
        if (needed.isEmpty()) {
            return List.of(new Fill(start, needed));
        }
        List<Fill> fills = new ArrayList<>();
        long left = needed.getAsLong();
        for (int at = start; at < row.size() && row.get(at).free(); at++) {
            long taken = Math.min(left, row.get(at).capacity().orElse(left));
            fills.add(new Fill(at, OptionalLong.of(taken)));
            left -= taken;
            if (left == 0) {
                return fills;
            }
        }
        return List.of();
    }
}
