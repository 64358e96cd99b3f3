package org.glintery.planning.flow;

import java.util.Arrays;

/**
 * A directed network whose arcs carry whole packets between a least and a most amount, and in which what flows into a
 * node flows out of it. Nodes and arcs are numbered from 0. The arrays are shared for speed: read them, never write.
 */
public final class FlowNetwork {

    public final int nodes;
    public final int arcs;
    public final int[] from;
    public final int[] to;
    public final int[] low;
    public final int[] high;

    private FlowNetwork(int nodes, int[] from, int[] to, int[] low, int[] high) {
        this.nodes = nodes;
        this.arcs = from.length;
        this.from = from;
        this.to = to;
        this.low = low;
        this.high = high;
    }

    /** The same nodes and arcs between other bounds. */
    public FlowNetwork bounded(Bounds other) {
        return new FlowNetwork(nodes, from, to, other.low(), other.high());
    }

    public Bounds bounds() {
        return new Bounds(low, high);
    }

    /** Collects nodes and arcs. Not safe for use by several threads. */
    public static final class Builder {
        private int nodes;
        private int arcs;
        private int[] from = new int[64];
        private int[] to = new int[64];
        private int[] low = new int[64];
        private int[] high = new int[64];

        /** @return the number of the first of them */
        public int nodes(int count) {
            nodes += count;
            return nodes - count;
        }

        /** @return its number */
        public int arc(int source, int target, int least, int most) {
            if (arcs == from.length) {
                from = Arrays.copyOf(from, 2 * arcs);
                to = Arrays.copyOf(to, 2 * arcs);
                low = Arrays.copyOf(low, 2 * arcs);
                high = Arrays.copyOf(high, 2 * arcs);
            }
            from[arcs] = source;
            to[arcs] = target;
            low[arcs] = least;
            high[arcs] = most;
            return arcs++;
        }

        public FlowNetwork build() {
            return new FlowNetwork(
                    nodes,
                    Arrays.copyOf(from, arcs),
                    Arrays.copyOf(to, arcs),
                    Arrays.copyOf(low, arcs),
                    Arrays.copyOf(high, arcs));
        }
    }
}
