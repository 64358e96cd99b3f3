package org.glintery.planning.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.concurrent.CancellationException;
import org.glintery.planning.flow.FlowNetwork;
import org.glintery.planning.flow.NetworkSimplex;
import org.glintery.planning.flow.Work;
import org.jgrapht.alg.flow.mincost.CapacityScalingMinimumCostFlow;
import org.jgrapht.alg.flow.mincost.MinimumCostFlowProblem.MinimumCostFlowProblemImpl;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleDirectedWeightedGraph;
import org.junit.jupiter.api.Test;

class CheapestTransportTest {

    private static final double CENTS = 1000;

    /** Whole thousandths, so that solvers of whole numbers can agree. */
    private static TransportTask task(SplittableRandom random, int rows, int columns, int mostAmount, int spare) {
        double[][] cost = new double[rows][columns];
        for (double[] row : cost) {
            Arrays.setAll(row, column -> random.nextInt(40 * (int) CENTS) / CENTS);
        }
        int[] amounts = new int[rows];
        Arrays.setAll(amounts, row -> random.nextInt(mostAmount + 1));
        int[] limits = new int[columns];
        int left = Arrays.stream(amounts).sum() + (spare == 0 ? 0 : random.nextInt(spare));
        while (left > 0) {
            int put = 1 + random.nextInt(1 + left / 3);
            limits[random.nextInt(columns)] += put;
            left -= put;
        }
        return new TransportTask(amounts, limits, (row, column) -> cost[row][column]);
    }

    private static void holds(String as, TransportTask task, TransportPlan plan) {
        assertThat(TransportCheck.fault(task, plan)).as(as).isEmpty();
        assertThat(plan.gap()).as(as).isLessThan(1e-9);
    }

    @Test
    void isTheCheapestOfAllWays_onSmallTasks() {
        long seed = 4401;
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 2_000; i++) {
            String as = "seed %d, %d".formatted(seed, i);
            TransportTask task = task(random, 1 + random.nextInt(6), 1 + random.nextInt(4), 1, random.nextInt(4));
            double[] prices = random.doubles(task.limits().length, 0, 30).toArray();
            TransportPlan plan = CheapestTransport.of(task, prices, () -> false);
            holds(as, task, plan);
            assertThat(plan.cost())
                    .as(as)
                    .isCloseTo(cheapestOfAll(task, 0, task.limits().clone()), within(1e-9));
        }
    }

    private static double cheapestOfAll(TransportTask task, int row, int[] left) {
        if (row == task.amounts().length) {
            return 0;
        }
        if (task.amounts()[row] == 0) {
            return cheapestOfAll(task, row + 1, left);
        }
        double least = Double.POSITIVE_INFINITY;
        for (int column = 0; column < left.length; column++) {
            if (left[column] > 0) {
                left[column]--;
                least = Math.min(least, task.costs().of(row, column) + cheapestOfAll(task, row + 1, left));
                left[column]++;
            }
        }
        return least;
    }

    @Test
    void agreesWithTwoOtherSolvers_onMiddlingTasks() {
        long seed = 4402;
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 30; i++) {
            String as = "seed %d, %d".formatted(seed, i);
            TransportTask task = task(random, 60 + random.nextInt(60), 5 + random.nextInt(15), 40, i % 3 * 300);
            TransportPlan plan = CheapestTransport.of(task);
            holds(as, task, plan);
            assertThat(Math.round(plan.cost() * CENTS)).as(as).isEqualTo(simplex(task));
            assertThat(Math.round(plan.cost() * CENTS)).as(as).isEqualTo(scaling(task));
        }
    }

    private static long simplex(TransportTask task) {
        FlowNetwork.Builder network = new FlowNetwork.Builder();
        int rows = task.amounts().length;
        int columns = task.limits().length;
        int source = network.nodes(rows + columns + 1) + rows + columns;
        long[] cost = new long[rows + columns + rows * columns];
        int total = (int) task.amount();
        for (int row = 0; row < rows; row++) {
            network.arc(source, row, task.amounts()[row], task.amounts()[row]);
        }
        for (int column = 0; column < columns; column++) {
            network.arc(rows + column, source, 0, task.limits()[column]);
        }
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                int arc = network.arc(row, rows + column, 0, total);
                cost[arc] = Math.round(CENTS * task.costs().of(row, column));
            }
        }
        FlowNetwork built = network.build();
        NetworkSimplex simplex = new NetworkSimplex(built, Work.unlimited());
        assertThat(simplex.minimise(cost)).isTrue();
        long sum = 0;
        for (int arc = 0; arc < cost.length; arc++) {
            sum += cost[arc] * simplex.flow(arc);
        }
        return sum;
    }

    private static long scaling(TransportTask task) {
        var graph = new SimpleDirectedWeightedGraph<Integer, DefaultWeightedEdge>(DefaultWeightedEdge.class);
        int rows = task.amounts().length;
        int columns = task.limits().length;
        for (int node = 0; node <= rows + columns; node++) {
            graph.addVertex(node);
        }
        int drain = rows + columns;
        for (int column = 0; column < columns; column++) {
            graph.setEdgeWeight(graph.addEdge(rows + column, drain), 0);
            for (int row = 0; row < rows; row++) {
                graph.setEdgeWeight(
                        graph.addEdge(row, rows + column),
                        Math.round(CENTS * task.costs().of(row, column)));
            }
        }
        int total = (int) task.amount();
        var problem = new MinimumCostFlowProblemImpl<Integer, DefaultWeightedEdge>(
                graph,
                node -> node < rows ? task.amounts()[node] : node == drain ? -total : 0,
                edge -> graph.getEdgeTarget(edge) == drain ? task.limits()[graph.getEdgeSource(edge) - rows] : total);
        return Math.round(new CapacityScalingMinimumCostFlow<Integer, DefaultWeightedEdge>()
                .getMinimumCostFlow(problem)
                .getCost());
    }

    @Test
    void comesOutAsCheap_whateverThePricesItBeginsWith() {
        long seed = 4403;
        SplittableRandom random = new SplittableRandom(seed);
        TransportTask task = task(random, 300, 25, 30, 200);
        double cost = CheapestTransport.of(task).cost();
        for (int i = 0; i < 10; i++) {
            TransportPlan plan =
                    CheapestTransport.of(task, random.doubles(25, 0, 50).toArray(), () -> false);
            holds("seed " + seed, task, plan);
            assertThat(plan.cost()).as("seed %d", seed).isCloseTo(cost, within(1e-6));
        }
    }

    @Test
    void endsWhenCancelled_andRefusesWhatDoesNotFit() {
        TransportTask tight = new TransportTask(new int[] {3, 3}, new int[] {3, 3}, (row, column) -> column);
        assertThatThrownBy(() -> CheapestTransport.of(tight, new double[2], () -> true))
                .isInstanceOf(CancellationException.class);
        TransportTask tooMuch = new TransportTask(new int[] {4, 3}, new int[] {3, 3}, (row, column) -> column);
        assertThatThrownBy(() -> CheapestTransport.of(tooMuch)).isInstanceOf(IllegalArgumentException.class);
    }
}
