package org.glintery.planning.clearing;

import java.util.Optional;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import org.glintery.planning.flow.Bounds;
import org.glintery.planning.flow.NetworkSimplex;
import org.glintery.planning.flow.Work;

/**
 * Plans that keep to the links which a relaxation uses: the cheapest flow when a packet costs the less, the more of its
 * link is used there. Not safe for use by several threads.
 */
final class GuidedPlans {

    private static final double FINENESS = 1e6;
    private static final long BARRED = 1_000_000_000;

    private final ParcelNetwork net;
    private final NetworkSimplex simplex;
    private final GivingRule rule;
    private final Random random = new Random(1);

    GuidedPlans(ParcelNetwork net, Bounds ranges, GivingRule rule, Work work) {
        this.net = net;
        this.rule = rule;
        simplex = new NetworkSimplex(net.network().bounded(ranges), work);
    }

    /**
     * @param usage by link, how much of it is used, from 0 to 1; less than 0 for links that should not be used at all
     * @param spread by how much costs are mixed at random, from 0 to 1
     * @return a plan; empty when that breaks the rule
     */
    Optional<int[]> plan(IntToDoubleFunction usage, double spread) {
        long[] cost = new long[net.network().arcs];
        for (int arc = 0; arc < net.lanes().size(); arc++) {
            double used = usage.applyAsDouble(net.lanes().get(arc).link());
            double factor = 1 + spread * (random.nextDouble() - 0.5);
            cost[arc] = used < 0 ? BARRED : Math.round(Math.max(0, 1 - used) * factor * FINENESS);
        }
        return simplex.minimise(cost) ? Optional.of(simplex.flows()).filter(rule::isKept) : Optional.empty();
    }
}
