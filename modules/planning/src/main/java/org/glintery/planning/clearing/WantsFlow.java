package org.glintery.planning.clearing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.glintery.planning.flow.Bounds;
import org.glintery.planning.flow.NetworkSimplex;
import org.glintery.planning.flow.Work;

/**
 * The most wants that can be met, priority by priority, when traders take part as told: an exact optimum by flows. Only
 * that nobody may give for nothing is left out, which {@link #wronged} tells.
 *
 * @param met packets for each priority, the first first
 * @param face all such plans
 * @param plan one of them
 * @param wronged traders who give for nothing in this plan and may not
 */
record WantsFlow(Part[] parts, int[] met, Face face, List<Sent> plan, int[] wronged) {

    /** Empty when nobody can take part like that. */
    static Optional<WantsFlow> solve(Round round, List<KindLines> lines, Part[] parts, Work work) {
        WantsNetwork net = new WantsNetwork(round, lines, parts);
        NetworkSimplex simplex = new NetworkSimplex(net.network, work);
        int[] priorities = priorities(round);
        List<Face.Level> levels = new ArrayList<>();
        for (int priority : priorities) {
            long[] cost = new long[net.network.arcs];
            for (int j = 0; j < net.wantArc.length; j++) {
                if (net.wantArc[j] >= 0 && round.wants().get(j).priority() == priority) {
                    cost[net.wantArc[j]] = -1;
                }
            }
            if (!simplex.minimise(cost)) {
                return Optional.empty();
            }
            simplex.keepOptimal();
            levels.add(level(net, simplex.potentials()));
        }
        Face face = face(net, simplex, levels);
        giveLittleMore(round, net, simplex);
        int[] met = new int[priorities.length];
        for (int j = 0; j < net.wantArc.length; j++) {
            if (net.wantArc[j] >= 0) {
                int level = Arrays.binarySearch(priorities, round.wants().get(j).priority());
                met[level] += simplex.flow(net.wantArc[j]);
            }
        }
        return Optional.of(new WantsFlow(parts, met, face, PlainPlan.of(net, simplex), wronged(round, net, simplex)));
    }

    /** In order, without repetition. */
    static int[] priorities(Round round) {
        return round.wants().stream()
                .mapToInt(Want::priority)
                .distinct()
                .sorted()
                .toArray();
    }

    /** Among the best plans one with few who give more than they get, so that hardly anybody gives for nothing. */
    private static void giveLittleMore(Round round, WantsNetwork net, NetworkSimplex simplex) {
        long[] cost = new long[net.network.arcs];
        for (int t = 0; t < net.givesMore.length; t++) {
            cost[net.givesMore[t]] = round.traders().get(t).mayGiveForNothing() ? 0 : 1;
        }
        simplex.minimise(cost);
    }

    private static Face.Level level(WantsNetwork net, long[] potentials) {
        return new Face.Level(of(potentials, net.offerNode), of(potentials, net.wantNode));
    }

    private static long[] of(long[] potentials, int[] nodes) {
        return IntStream.of(nodes)
                .mapToLong(node -> node < 0 ? 0 : potentials[node])
                .toArray();
    }

    private static Face face(WantsNetwork net, NetworkSimplex simplex, List<Face.Level> levels) {
        return new Face(
                Bounds.kept(simplex, net.network, net.offerArc),
                Bounds.kept(simplex, net.network, net.wantArc),
                Bounds.kept(simplex, net.network, net.givesMore),
                Bounds.kept(simplex, net.network, net.getsMore),
                Bounds.kept(simplex, net.network, net.gets),
                levels);
    }

    private static int[] wronged(Round round, WantsNetwork net, NetworkSimplex simplex) {
        return IntStream.range(0, net.offerArc.length)
                .filter(i -> net.offerArc[i] >= 0 && simplex.flow(net.offerArc[i]) > 0)
                .map(i -> round.offers().get(i).trader())
                .filter(t -> simplex.flow(net.gets[t]) == 0
                        && !round.traders().get(t).mayGiveForNothing())
                .distinct()
                .toArray();
    }
}
