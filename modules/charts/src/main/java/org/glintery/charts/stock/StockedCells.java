package org.glintery.charts.stock;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.glintery.api.charts.Watch;
import org.glintery.charts.picture.LightGrid;
import org.glintery.charts.progress.PartOfWatch;
import org.glintery.charts.shading.DrillColours;
import org.glintery.charts.shading.LabGrid;
import org.glintery.charts.shading.Shader;
import org.glintery.planning.transport.CheapestTransport;
import org.glintery.planning.transport.TransportCheck;
import org.glintery.planning.transport.TransportPlan;
import org.glintery.planning.transport.TransportTask;

/**
 * Shares the drills that are there out to the cells so that these are as little off as may be, and proves how near that
 * comes to the least: every cell by itself, but where there are many the prices of drills are found with cells of like
 * colour in one. What is proven is checked anew each time. Used once; not safe for several threads.
 */
public final class StockedCells implements Shader {

    private static final int MOST_GROUPS = 20_000;
    /** So many where fewer do not prove enough. */
    private static final int MANY_GROUPS = 60_000;

    private static final double ENOUGH = 0.01;
    /** Prices of so many groups are found first where there are more. */
    private static final int FEW_GROUPS = 1_500;

    private final int[] counts;
    private double gap = Double.NaN;

    /** @param counts by colour; for all cells at least */
    public StockedCells(int[] counts) {
        this.counts = counts;
    }

    /** After it has shaded: the mean difference of a cell is above the least possible by this share at most. */
    public double gap() {
        return gap;
    }

    @Override
    public int[] shaded(LightGrid wanted, DrillColours colours, Watch watch) {
        LabGrid lab = LabGrid.of(wanted);
        CellGroups groups = CellGroups.of(wanted, lab, MOST_GROUPS);
        double[] prices = prices(wanted, lab, colours, groups, watch);
        int[] drills = shared(wanted, lab, colours, groups, prices, new PartOfWatch(watch, 0.2, 0.7));
        return gap <= ENOUGH
                ? drills
                : shared(
                        wanted,
                        lab,
                        colours,
                        CellGroups.of(wanted, lab, MANY_GROUPS),
                        prices,
                        new PartOfWatch(watch, 0.7, 1));
    }

    private int[] shared(
            LightGrid wanted, LabGrid lab, DrillColours colours, CellGroups groups, double[] prices, Watch watch) {
        TransportTask grouped = new TransportTask(groups.cells, counts, groups.off(colours));
        TransportPlan plan = CheapestTransport.of(grouped, prices, watch::isCancelled);
        watch.reached(0.4);
        int[] cells = IntStream.range(0, wanted.cells())
                .filter(cell -> !wanted.isBlank(cell))
                .toArray();
        int[] groupOf = IntStream.of(cells).map(cell -> groups.of[cell]).toArray();
        int[] ones = new int[cells.length];
        Arrays.fill(ones, 1);
        TransportTask task =
                new TransportTask(ones, counts, (place, drill) -> colours.difference(drill, lab, cells[place]));
        int[] drillOf = dealt(plan, groups, groupOf);
        if (!groups.exact) {
            drillOf = new CellsByPrices(task, plan.prices(), drillOf).bettered(grouped, groupOf);
        }
        watch.reached(0.7);
        int[] places = IntStream.range(0, cells.length).toArray();
        gap = TransportCheck.proven(
                        task, new TransportPlan(places, drillOf, ones, plan.prices(), Double.NaN, Double.NaN))
                .gap();
        int[] drills = new int[wanted.cells()];
        Arrays.fill(drills, NONE);
        for (int place = 0; place < cells.length; place++) {
            drills[cells[place]] = drillOf[place];
        }
        return drills;
    }

    /** To begin with. */
    private double[] prices(LightGrid wanted, LabGrid lab, DrillColours colours, CellGroups groups, Watch watch) {
        double[] none = new double[counts.length];
        if (groups.size() <= 2 * FEW_GROUPS) {
            return none;
        }
        CellGroups few = CellGroups.of(wanted, lab, FEW_GROUPS);
        double[] prices = CheapestTransport.of(
                        new TransportTask(few.cells, counts, few.off(colours)), none, watch::isCancelled)
                .prices();
        watch.reached(0.2);
        return prices;
    }

    /** By cell, those of a group as they come. */
    private static int[] dealt(TransportPlan plan, CellGroups groups, int[] groupOf) {
        int[][] places = new int[groups.size()][];
        int[] filled = new int[groups.size()];
        for (int group = 0; group < places.length; group++) {
            places[group] = new int[groups.cells[group]];
        }
        for (int place = 0; place < groupOf.length; place++) {
            places[groupOf[place]][filled[groupOf[place]]++] = place;
        }
        int[] drillOf = new int[groupOf.length];
        for (int share = 0; share < plan.rows().length; share++) {
            int group = plan.rows()[share];
            for (int i = 0; i < plan.amounts()[share]; i++) {
                drillOf[places[group][--filled[group]]] = plan.columns()[share];
            }
        }
        return drillOf;
    }
}
