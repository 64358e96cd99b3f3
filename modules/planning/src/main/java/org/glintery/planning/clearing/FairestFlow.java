package org.glintery.planning.clearing;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.glintery.planning.flow.Bounds;
import org.glintery.planning.flow.FlowNetwork;
import org.glintery.planning.flow.Work;

/**
 * The fairest plans along given links: a cheapest flow in which what a trader gives more than they get comes in steps that
 * cost more and more. Exact by convexity. Not safe for use by several threads.
 */
final class FairestFlow {

    private final ParcelNetwork net;
    private final FlowNetwork network;
    private final RuledFlow flows;
    /** By trader, the arcs of the steps. */
    private final int[][] givesMore;

    private final int[][] getsMore;
    private final int[] link;

    FairestFlow(ParcelNetwork net, GivingRule rule, Work work) {
        this.net = net;
        link = net.links();
        FlowNetwork plain = net.network();
        FlowNetwork.Builder builder = new FlowNetwork.Builder();
        builder.nodes(plain.nodes);
        for (int arc = 0; arc < plain.arcs; arc++) {
            builder.arc(plain.from[arc], plain.to[arc], plain.low[arc], plain.high[arc]);
        }
        givesMore = steps(builder, net.givesMore());
        getsMore = steps(builder, net.getsMore());
        network = builder.build();
        long[] cost = new long[network.arcs];
        for (int t = 0; t < givesMore.length; t++) {
            if (!net.round().traders().get(t).mayGiveForNothing()) {
                price(cost, givesMore[t]);
            }
            price(cost, getsMore[t]);
        }
        flows = new RuledFlow(network, cost, rule, work);
    }

    private int[][] steps(FlowNetwork.Builder builder, int[] arcs) {
        FlowNetwork plain = net.network();
        return IntStream.of(arcs)
                .mapToObj(arc -> Unfairness.steps(plain.high[arc]).stream()
                        .mapToInt(step -> builder.arc(plain.from[arc], plain.to[arc], 0, step.packets()))
                        .toArray())
                .toArray(int[][]::new);
    }

    private void price(long[] cost, int[] arcs) {
        List<Unfairness.Step> steps = Unfairness.steps(Integer.MAX_VALUE / 2);
        for (int i = 0; i < arcs.length; i++) {
            cost[arcs[i]] = steps.get(i).each();
        }
    }

    /** A fairest plan within bounds of the network's arcs and along links that are not barred; it keeps the rule. */
    Optional<int[]> plan(Bounds bounds, boolean[] barred) {
        return flows.cheapest(within(bounds, barred)).map(flow -> {
            int[] plain = Arrays.copyOf(flow, net.network().arcs);
            for (int t = 0; t < givesMore.length; t++) {
                plain[net.givesMore()[t]] = sum(flow, givesMore[t]);
                plain[net.getsMore()[t]] = sum(flow, getsMore[t]);
            }
            return plain;
        });
    }

    /** No plan within these bounds is less unfair, whatever it costs. */
    long least(Bounds bounds) {
        boolean[] none = new boolean[net.ways().size()];
        return flows.cheapestWithoutRule(within(bounds, none)).map(flows::cost).orElse(Long.MAX_VALUE);
    }

    private Bounds within(Bounds bounds, boolean[] barred) {
        int[] low = Arrays.copyOf(bounds.low(), network.arcs);
        int[] high = Arrays.copyOf(bounds.high(), network.arcs);
        for (int arc = 0; arc < link.length; arc++) {
            if (link[arc] >= 0 && barred[link[arc]]) {
                high[arc] = low[arc];
            }
        }
        for (int t = 0; t < givesMore.length; t++) {
            spread(net.givesMore()[t], givesMore[t], low, high);
            spread(net.getsMore()[t], getsMore[t], low, high);
        }
        return new Bounds(low, high);
    }

    /** Lets the steps carry what the one arc would. */
    private void spread(int arc, int[] steps, int[] low, int[] high) {
        int least = low[arc];
        int most = high[arc];
        low[arc] = 0;
        high[arc] = 0;
        for (int step : steps) {
            high[step] = Math.min(network.high[step], most);
            low[step] = Math.min(network.high[step], least);
            most -= high[step];
            least -= low[step];
        }
    }

    private static int sum(int[] flow, int[] arcs) {
        return IntStream.of(arcs).map(arc -> flow[arc]).sum();
    }
}
