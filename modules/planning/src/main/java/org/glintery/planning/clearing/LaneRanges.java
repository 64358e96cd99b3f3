package org.glintery.planning.clearing;

import org.glintery.planning.flow.Bounds;
import org.glintery.planning.flow.FlowNetwork;
import org.glintery.planning.flow.Residual;
import org.glintery.planning.flow.Work;

/**
 * How few and how many packets each arc carries in any plan of a network, found by sending packets round. Narrower ranges
 * make bounds better: a lane that can carry one packet at most needs its whole link for it.
 */
final class LaneRanges {

    private LaneRanges() {}

    /** @param flow any plan. Arcs for which no work is left keep their bounds */
    static Bounds of(FlowNetwork network, int[] flow, Work work) {
        Bounds ranges = network.bounds().copy();
        Residual residual = new Residual(network, network.bounds(), flow, (arc, by) -> {}, work);
        for (int arc = 0; arc < network.arcs && !work.isSpent(); arc++) {
            boolean more = true;
            while (more) {
                more = residual.raise(arc, step -> Residual.Toll.FREE);
            }
            ranges.high()[arc] = residual.flow(arc);
            residual.lowerTo(arc, network.low[arc], step -> Residual.Toll.FREE);
            ranges.low()[arc] = residual.flow(arc);
            residual.settle();
        }
        return ranges;
    }
}
