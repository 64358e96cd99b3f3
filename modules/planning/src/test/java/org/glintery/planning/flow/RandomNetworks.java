package org.glintery.planning.flow;

import java.util.Random;

/** Random networks with lower bounds, of which most have a flow. */
final class RandomNetworks {

    private RandomNetworks() {}

    static FlowNetwork next(Random random, int nodes, int arcs) {
        FlowNetwork.Builder builder = new FlowNetwork.Builder();
        builder.nodes(nodes);
        for (int arc = 0; arc < arcs; arc++) {
            int from = random.nextInt(nodes);
            int to = (from + 1 + random.nextInt(nodes - 1)) % nodes;
            int high = random.nextInt(12);
            builder.arc(from, to, random.nextInt(8) == 0 ? random.nextInt(high + 1) / 2 : 0, high);
        }
        return builder.build();
    }

    static long[] costs(Random random, FlowNetwork network, int most) {
        return random.longs(network.arcs, -most, most + 1).toArray();
    }

    static long cost(int[] flow, long[] costs) {
        long sum = 0;
        for (int arc = 0; arc < flow.length; arc++) {
            sum += flow[arc] * costs[arc];
        }
        return sum;
    }

    /** Whether a flow keeps its bounds and what comes in goes out. */
    static boolean isFlow(FlowNetwork network, int[] flow) {
        int[] surplus = new int[network.nodes];
        for (int arc = 0; arc < network.arcs; arc++) {
            if (flow[arc] < network.low[arc] || flow[arc] > network.high[arc]) {
                return false;
            }
            surplus[network.from[arc]] -= flow[arc];
            surplus[network.to[arc]] += flow[arc];
        }
        for (int node : surplus) {
            if (node != 0) {
                return false;
            }
        }
        return true;
    }
}
