package org.glintery.planning.clearing;

import java.util.Optional;
import org.glintery.planning.flow.Bounds;
import org.glintery.planning.flow.FlowNetwork;
import org.glintery.planning.flow.NetworkSimplex;
import org.glintery.planning.flow.Work;

/**
 * Cheapest flows in which nobody gives for nothing who may not: where the cheapest flow breaks that rule, the trader gets
 * something, or gives nothing. Not safe for use by several threads.
 */
final class RuledFlow {

    private final FlowNetwork network;
    private final long[] cost;
    private final GivingRule rule;
    private final Work work;
    private int[] best;
    private long least = Long.MAX_VALUE;

    /** @param rule by the arcs of this network */
    RuledFlow(FlowNetwork network, long[] cost, GivingRule rule, Work work) {
        this.network = network;
        this.cost = cost;
        this.rule = rule;
        this.work = work;
    }

    /** Empty when there is no such flow, or none is found before the work is spent. */
    Optional<int[]> cheapest(Bounds bounds) {
        best = null;
        least = Long.MAX_VALUE;
        search(bounds);
        return Optional.ofNullable(best);
    }

    /** Without the rule. Empty when there is no flow. */
    Optional<int[]> cheapestWithoutRule(Bounds bounds) {
        NetworkSimplex simplex = new NetworkSimplex(network.bounded(bounds), work);
        return simplex.minimise(cost) ? Optional.of(simplex.flows()) : Optional.empty();
    }

    long cost(int[] flow) {
        long sum = 0;
        for (int arc = 0; arc < flow.length; arc++) {
            sum += cost[arc] * flow[arc];
        }
        return sum;
    }

    private void search(Bounds bounds) {
        Optional<int[]> found = work.isSpent() ? Optional.empty() : cheapestWithoutRule(bounds);
        if (found.isEmpty() || cost(found.get()) >= least) {
            return;
        }
        int[] flow = found.get();
        int trader = rule.brokenFor(arc -> flow[arc]);
        if (trader == GivingRule.NOBODY) {
            best = flow;
            least = cost(flow);
            return;
        }
        Bounds getsSomething = bounds.copy();
        getsSomething.low()[rule.gets()[trader]] = 1;
        if (bounds.high()[rule.gets()[trader]] > 0) {
            search(getsSomething);
        }
        Bounds givesNothing = bounds.copy();
        boolean possible = true;
        for (int arc : rule.offers()[trader]) {
            possible &= bounds.low()[arc] == 0;
            givesNothing.high()[arc] = 0;
        }
        if (possible) {
            search(givesNothing);
        }
    }
}
