package org.glintery.charts.shading;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.glintery.api.charts.Watch;
import org.glintery.charts.picture.LightGrid;
import org.glintery.colour.Ciede2000;
import org.glintery.planning.transport.CheapestTransport;
import org.glintery.planning.transport.TransportPlan;
import org.glintery.planning.transport.TransportTask;

/**
 * A shading of which each drill is laid no oftener than it is there: what is too much of one gives way to those that look
 * most like it, with the least difference in all, in the cells that lose least by it. So the shading keeps its grain.
 */
final class WithinCounts implements Shader {

    private final Shader free;
    private final int[] counts;

    /** @param counts by colour; for all cells at least */
    WithinCounts(Shader free, int[] counts) {
        this.free = free;
        this.counts = counts;
    }

    @Override
    public int[] shaded(LightGrid wanted, DrillColours colours, Watch watch) {
        int[] drills = free.shaded(wanted, colours, watch);
        int[] laid = new int[colours.size()];
        IntStream.of(drills).filter(drill -> drill != NONE).forEach(drill -> laid[drill]++);
        TransportPlan plan = CheapestTransport.of(
                new TransportTask(laid, counts, (one, other) -> between(colours, one, other)),
                new double[laid.length],
                watch::isCancelled);
        giveWay(LabGrid.of(wanted), colours, drills, plan);
        return drills;
    }

    private static double between(DrillColours colours, int one, int other) {
        return one == other
                ? 0
                : Ciede2000.difference(
                        colours.l[one],
                        colours.a[one],
                        colours.b[one],
                        colours.chroma[one],
                        colours.l[other],
                        colours.a[other],
                        colours.b[other],
                        colours.chroma[other]);
    }

    private static void giveWay(LabGrid lab, DrillColours colours, int[] drills, TransportPlan plan) {
        var cells = IntStream.range(0, drills.length)
                .filter(cell -> drills[cell] != NONE)
                .boxed()
                .collect(Collectors.groupingBy(cell -> drills[cell]));
        for (int share = 0; share < plan.rows().length; share++) {
            int from = plan.rows()[share];
            int to = plan.columns()[share];
            if (from != to) {
                List<Integer> there = cells.get(from);
                double[] loss = new double[drills.length];
                there.forEach(
                        cell -> loss[cell] = colours.difference(to, lab, cell) - colours.difference(from, lab, cell));
                there.sort(Comparator.comparingDouble(cell -> loss[cell]));
                List<Integer> leaving = there.subList(0, plan.amounts()[share]);
                leaving.forEach(cell -> drills[cell] = to);
                leaving.clear();
            }
        }
    }
}
