package org.glintery.planning.flow;

import java.util.Arrays;

/**
 * Cheapest flows by the primal network simplex on strongly feasible trees (Cunningham, Mathematical Programming 11, 1976),
 * with block pricing. Several costs may be minimised one after the other, each among the optima of those before: after
 * {@link #keepOptimal} every arc whose reduced cost is not 0 stays as it is, which leaves exactly the optima
 * (complementary slackness).
 *
 * <p>Costs must be below 2^40 and the network below 2^20 nodes, so that no potential overflows. Not safe for use by
 * several threads.
 */
public final class NetworkSimplex {

    private static final byte AT_LOW = 1;
    private static final byte IN_TREE = 0;
    private static final byte AT_HIGH = -1;
    private static final int UNBOUNDED = Integer.MAX_VALUE;

    private final FlowNetwork network;
    private final Work work;
    private final int arcs;
    private final int[] from;
    private final int[] to;
    /** What fits between the bounds; the flow is counted from the lower one. */
    private final int[] room;

    private final int[] flow;
    private final long[] cost;
    private final byte[] state;
    private final boolean[] fixed;
    private final SpanningTree tree;
    private final int block;
    private int nextArc;

    public NetworkSimplex(FlowNetwork network, Work work) {
        this.network = network;
        this.work = work;
        arcs = network.arcs;
        int all = arcs + network.nodes;
        from = Arrays.copyOf(network.from, all);
        to = Arrays.copyOf(network.to, all);
        room = new int[all];
        flow = new int[all];
        cost = new long[all];
        state = new byte[all];
        fixed = new boolean[all];
        tree = new SpanningTree(network.nodes);
        block = Math.max(20, (int) Math.sqrt(arcs));
        int[] surplus = new int[network.nodes];
        for (int arc = 0; arc < arcs; arc++) {
            room[arc] = network.high[arc] - network.low[arc];
            state[arc] = AT_LOW;
            fixed[arc] = room[arc] == 0;
            surplus[to[arc]] += network.low[arc];
            surplus[from[arc]] -= network.low[arc];
        }
        for (int node = 0; node < network.nodes; node++) {
            hang(node, surplus[node]);
        }
    }

    private void hang(int node, int surplus) {
        int arc = arcs + node;
        boolean up = surplus >= 0;
        from[arc] = up ? node : tree.root;
        to[arc] = up ? tree.root : node;
        room[arc] = UNBOUNDED;
        flow[arc] = Math.abs(surplus);
        state[arc] = IN_TREE;
        tree.arc[node] = arc;
        tree.upward[node] = up;
    }

    /** Makes the flow a cheapest one among those that are still allowed. @return whether there is a flow at all */
    public boolean minimise(long[] arcCost) {
        long dearest = 0;
        for (int arc = 0; arc < arcs; arc++) {
            cost[arc] = arcCost[arc];
            dearest = Math.max(dearest, Math.abs(arcCost[arc]));
        }
        Arrays.fill(cost, arcs, cost.length, (dearest + 1) * (network.nodes + 1));
        tree.price(cost);
        work.spend(network.nodes + arcs);
        for (int arc = entering(); arc >= 0; arc = entering()) {
            pivot(arc);
        }
        for (int arc = arcs; arc < flow.length; arc++) {
            if (flow[arc] > 0) {
                return false;
            }
        }
        return true;
    }

    /** From now on only flows that are optimal for the cost last minimised are looked at. */
    public void keepOptimal() {
        for (int arc = 0; arc < arcs; arc++) {
            fixed[arc] |= state[arc] != IN_TREE && reduced(arc) != 0;
        }
    }

    public int flow(int arc) {
        return network.low[arc] + flow[arc];
    }

    public int[] flows() {
        int[] flows = new int[arcs];
        Arrays.setAll(flows, this::flow);
        return flows;
    }

    /** Whether all optima kept so far have the same flow in this arc. When false they may nevertheless. */
    public boolean fixed(int arc) {
        return fixed[arc];
    }

    /** Of the cost last minimised: an arc's reduced cost is cost + potential(from) - potential(to). */
    public long[] potentials() {
        return Arrays.copyOf(tree.potential, network.nodes);
    }

    private long reduced(int arc) {
        return cost[arc] + tree.potential[from[arc]] - tree.potential[to[arc]];
    }

    /** The arc of a block that promises most; -1 when none promises anything. */
    private int entering() {
        int best = -1;
        long most = 0;
        int left = block;
        for (int seen = 0; seen < arcs; seen++) {
            int arc = nextArc;
            nextArc = nextArc + 1 == arcs ? 0 : nextArc + 1;
            if (!fixed[arc]) {
                long gain = -state[arc] * reduced(arc);
                if (gain > most) {
                    most = gain;
                    best = arc;
                }
            }
            if (--left == 0) {
                if (best >= 0) {
                    work.spend(seen);
                    return best;
                }
                left = block;
            }
        }
        work.spend(arcs);
        return best;
    }

    private void pivot(int entering) {
        boolean up = state[entering] == AT_LOW;
        int first = up ? from[entering] : to[entering];
        int second = up ? to[entering] : from[entering];
        int join = tree.join(first, second);
        int delta = room[entering];
        int leavingNode = -1;
        boolean leavesOnFirst = false;
        for (int u = first; u != join; u = tree.parent[u]) {
            int arc = tree.arc[u];
            int most = tree.upward[u] ? flow[arc] : room[arc] - flow[arc];
            if (most < delta) {
                delta = most;
                leavingNode = u;
                leavesOnFirst = true;
            }
        }
        for (int u = second; u != join; u = tree.parent[u]) {
            int arc = tree.arc[u];
            int most = tree.upward[u] ? room[arc] - flow[arc] : flow[arc];
            if (most <= delta) {
                delta = most;
                leavingNode = u;
                leavesOnFirst = false;
            }
        }
        push(entering, first, second, join, delta);
        if (leavingNode < 0) {
            state[entering] = (byte) -state[entering];
            return;
        }
        int leaving = tree.arc[leavingNode];
        int moved = leavesOnFirst ? first : second;
        int under = leavesOnFirst ? second : first;
        boolean leadsUp = from[entering] == moved;
        long raise = leadsUp ? -reduced(entering) : reduced(entering);
        work.spend(tree.rehang(leavingNode, moved, under, entering, leadsUp, raise));
        state[leaving] = flow[leaving] == 0 ? AT_LOW : AT_HIGH;
        state[entering] = IN_TREE;
    }

    private void push(int entering, int first, int second, int join, int delta) {
        if (delta == 0) {
            return;
        }
        flow[entering] += state[entering] * delta;
        for (int u = first; u != join; u = tree.parent[u]) {
            flow[tree.arc[u]] += tree.upward[u] ? -delta : delta;
        }
        for (int u = second; u != join; u = tree.parent[u]) {
            flow[tree.arc[u]] += tree.upward[u] ? delta : -delta;
        }
    }
}
