package org.glintery.planning.flow;

import java.util.Arrays;

/** A least and a most amount for each of a row of things. The arrays are shared: read them, never write. */
public record Bounds(int[] low, int[] high) {

    /** Those that the kept optima leave to arcs; nothing to what has no arc. */
    public static Bounds kept(NetworkSimplex flow, FlowNetwork network, int[] arcs) {
        int[] low = new int[arcs.length];
        int[] high = new int[arcs.length];
        for (int i = 0; i < arcs.length; i++) {
            if (arcs[i] >= 0) {
                boolean fixed = flow.fixed(arcs[i]);
                low[i] = fixed ? flow.flow(arcs[i]) : network.low[arcs[i]];
                high[i] = fixed ? flow.flow(arcs[i]) : network.high[arcs[i]];
            }
        }
        return new Bounds(low, high);
    }

    public Bounds copy() {
        return new Bounds(Arrays.copyOf(low, low.length), Arrays.copyOf(high, high.length));
    }
}
