package org.glintery.charts.stock;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.glintery.api.charts.Watch;
import org.glintery.charts.picture.LightGrid;
import org.glintery.charts.shading.DrillColours;
import org.glintery.charts.shading.LabGrid;
import org.glintery.planning.transport.CheapestTransport;
import org.glintery.planning.transport.TransportPlan;
import org.glintery.planning.transport.TransportTask;

/**
 * The fewest drills to buy with which a chart without shading comes near enough to what it would be with any drills. What
 * is bought may be any drill: a shop is one more column, in which each cell costs what its nearest drill is off, and which
 * holds as many as are bought. What the cells are off in all falls with that number ever more slowly, and the price of the
 * shop tells how fast at most: so steps from below never go past the fewest. Cells of like colour count as one where there
 * are many.
 */
public final class FewestToBuy {

    /** In CIEDE2000: by how much the mean cell may be worse than with any drills. */
    public static final double WITHIN = 0.5;

    private static final int MOST_GROUPS = 2_000;
    private static final double ROUNDING = 1e-9;

    private final CellGroups groups;
    private final DrillColours card;
    private final DrillColours stocked;
    private final int[] counts;

    private FewestToBuy(CellGroups groups, DrillColours card, DrillColours stocked, int[] counts) {
        this.groups = groups;
        this.card = card;
        this.stocked = stocked;
        this.counts = counts;
    }

    /**
     * How many to buy of each colour of the card.
     *
     * @param counts of the colours in the house; need not be enough for all cells
     */
    public static int[] of(LightGrid wanted, DrillColours card, DrillColours stocked, int[] counts, Watch watch) {
        CellGroups groups = CellGroups.of(wanted, LabGrid.of(wanted), MOST_GROUPS);
        return new FewestToBuy(groups, card, stocked, counts).fewest(watch);
    }

    private int[] fewest(Watch watch) {
        int size = groups.size();
        int[] nearest = IntStream.range(0, size)
                .map(group -> groups.nearest(card, group))
                .toArray();
        double[] free = IntStream.range(0, size)
                .mapToDouble(group -> groups.off(card).of(group, nearest[group]))
                .toArray();
        double enough = 0;
        for (int group = 0; group < size; group++) {
            enough += groups.cells[group] * (free[group] + WITHIN);
        }
        int shop = counts.length;
        int[] limits = Arrays.copyOf(counts, shop + 1);
        long cells = IntStream.of(groups.cells).asLongStream().sum();
        limits[shop] =
                (int) Math.max(0, cells - IntStream.of(counts).asLongStream().sum());
        double[] prices = new double[shop + 1];
        while (true) {
            TransportTask task = new TransportTask(
                    groups.cells,
                    limits,
                    (group, drill) ->
                            drill == shop ? free[group] : groups.off(stocked).of(group, drill));
            TransportPlan plan = CheapestTransport.of(task, prices, watch::isCancelled);
            double over = plan.cost() - enough;
            prices = plan.prices();
            if (over <= ROUNDING * (1 + enough)) {
                return bought(plan, shop, nearest);
            }
            double more = Math.ceil(over / prices[shop] - ROUNDING);
            limits[shop] += (int) Math.max(1, Math.min(cells - limits[shop], more));
        }
    }

    private int[] bought(TransportPlan plan, int shop, int[] nearest) {
        int[] bought = new int[card.size()];
        for (int share = 0; share < plan.rows().length; share++) {
            if (plan.columns()[share] == shop) {
                bought[nearest[plan.rows()[share]]] += plan.amounts()[share];
            }
        }
        return bought;
    }
}
