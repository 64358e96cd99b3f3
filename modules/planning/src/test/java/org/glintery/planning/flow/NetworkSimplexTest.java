package org.glintery.planning.flow;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import org.jgrapht.Graph;
import org.jgrapht.alg.flow.mincost.CapacityScalingMinimumCostFlow;
import org.jgrapht.alg.flow.mincost.MinimumCostFlowProblem;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.DirectedWeightedMultigraph;
import org.junit.jupiter.api.Test;

class NetworkSimplexTest {

    private static final long SEED = 4;

    @Test
    void agreesWithALibrary_onRandomNetworks() {
        Random random = new Random(SEED);
        int feasible = 0;
        for (int i = 0; i < 300; i++) {
            int nodes = 2 + random.nextInt(12);
            FlowNetwork network = RandomNetworks.next(random, nodes, nodes + random.nextInt(5 * nodes));
            long[] costs = RandomNetworks.costs(random, network, 9);
            NetworkSimplex simplex = new NetworkSimplex(network, Work.unlimited());
            String which = "seed " + SEED + " network " + i;
            boolean possible = simplex.minimise(costs);
            Double expected = byLibrary(network, costs);
            assertThat(possible).as(which).isEqualTo(expected != null);
            if (possible) {
                feasible++;
                assertThat(RandomNetworks.isFlow(network, simplex.flows()))
                        .as(which)
                        .isTrue();
                assertThat((double) RandomNetworks.cost(simplex.flows(), costs))
                        .as(which)
                        .isEqualTo(expected);
                assertThat(isOptimalByPotentials(network, simplex, costs))
                        .as(which)
                        .isTrue();
            }
        }
        assertThat(feasible).as("networks that have a flow").isBetween(100, 299);
    }

    /** Null when there is no flow. All arcs turned so that none costs less than nothing, as the library wants it. */
    private static Double byLibrary(FlowNetwork network, long[] costs) {
        Graph<Integer, DefaultWeightedEdge> graph = new DirectedWeightedMultigraph<>(DefaultWeightedEdge.class);
        Map<Integer, Integer> supply = new HashMap<>();
        Map<DefaultWeightedEdge, Integer> room = new HashMap<>();
        double base = 0;
        for (int node = 0; node < network.nodes; node++) {
            graph.addVertex(node);
            supply.put(node, 0);
        }
        for (int arc = 0; arc < network.arcs; arc++) {
            boolean turned = costs[arc] < 0;
            int already = turned ? network.high[arc] : network.low[arc];
            int from = turned ? network.to[arc] : network.from[arc];
            int to = turned ? network.from[arc] : network.to[arc];
            DefaultWeightedEdge edge = graph.addEdge(from, to);
            graph.setEdgeWeight(edge, Math.abs(costs[arc]));
            room.put(edge, network.high[arc] - network.low[arc]);
            base += (double) costs[arc] * already;
            supply.merge(network.to[arc], already, Integer::sum);
            supply.merge(network.from[arc], -already, Integer::sum);
        }
        try {
            return base
                    + new CapacityScalingMinimumCostFlow<Integer, DefaultWeightedEdge>()
                            .getMinimumCostFlow(new MinimumCostFlowProblem.MinimumCostFlowProblemImpl<>(
                                    graph, supply::get, room::get, edge -> 0))
                            .getCost();
        } catch (IllegalArgumentException noFlow) {
            return null;
        }
    }

    private static boolean isOptimalByPotentials(FlowNetwork network, NetworkSimplex simplex, long[] costs) {
        long[] potentials = simplex.potentials();
        for (int arc = 0; arc < network.arcs; arc++) {
            long reduced = costs[arc] + potentials[network.from[arc]] - potentials[network.to[arc]];
            if (reduced > 0 && simplex.flow(arc) > network.low[arc]
                    || reduced < 0 && simplex.flow(arc) < network.high[arc]) {
                return false;
            }
        }
        return true;
    }

    @Test
    void keepsTheFirstOptimum_whenASecondCostIsMinimised() {
        Random random = new Random(SEED);
        int improved = 0;
        for (int i = 0; i < 200; i++) {
            FlowNetwork network = RandomNetworks.next(random, 8, 30);
            long[] first = RandomNetworks.costs(random, network, 1);
            long[] second = RandomNetworks.costs(random, network, 5);
            NetworkSimplex simplex = new NetworkSimplex(network, Work.unlimited());
            if (!simplex.minimise(first)) {
                continue;
            }
            long least = RandomNetworks.cost(simplex.flows(), first);
            long before = RandomNetworks.cost(simplex.flows(), second);
            simplex.keepOptimal();
            assertThat(simplex.minimise(second)).isTrue();
            long after = RandomNetworks.cost(simplex.flows(), second);

            String which = "seed " + SEED + " network " + i;
            assertThat(RandomNetworks.cost(simplex.flows(), first)).as(which).isEqualTo(least);
            NetworkSimplex both = new NetworkSimplex(network, Work.unlimited());
            both.minimise(weighted(first, second));
            assertThat(after).as(which).isEqualTo(RandomNetworks.cost(both.flows(), second));
            improved += after < before ? 1 : 0;
        }
        assertThat(improved).isPositive();
    }

    /** The first cost so heavy that the second only decides between its optima. */
    private static long[] weighted(long[] first, long[] second) {
        long[] both = new long[first.length];
        for (int arc = 0; arc < both.length; arc++) {
            both[arc] = first[arc] * 10_000 + second[arc];
        }
        return both;
    }
}
