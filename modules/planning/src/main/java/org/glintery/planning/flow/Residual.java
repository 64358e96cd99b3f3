package org.glintery.planning.flow;

import java.util.Arrays;

/**
 * A flow that is changed by sending packets round: along arcs with room, and back along arcs in use. Remembers its changes,
 * so that they can be taken back. Not safe for use by several threads.
 */
public final class Residual {

    private static final int NONE = -1;

    private final FlowNetwork network;
    private final Listener listener;
    private final Work work;
    private final int[] flow;
    private final int[] low;
    private final int[] high;

    /** By node, where its arcs begin; an arc that leads to the node stands there as its complement. */
    private final int[] first;

    private final int[] around;

    /** The step that reached a node, and in which search it was seen or noted for later. */
    private final int[] reached;

    private final int[] seen;
    private final int[] noted;
    private final int[] queue;
    private final int[] later;
    private int search;

    private int[] changedArc = new int[64];
    private int[] changedBy = new int[64];
    private int changes;

    /** @param bounds watched, not copied: the caller may narrow them round the flow */
    public Residual(FlowNetwork network, Bounds bounds, int[] start, Listener listener, Work work) {
        this.network = network;
        this.listener = listener;
        this.work = work;
        low = bounds.low();
        high = bounds.high();
        flow = start.clone();
        first = new int[network.nodes + 1];
        for (int arc = 0; arc < network.arcs; arc++) {
            first[network.from[arc] + 1]++;
            first[network.to[arc] + 1]++;
        }
        for (int node = 0; node < network.nodes; node++) {
            first[node + 1] += first[node];
        }
        int[] next = Arrays.copyOf(first, network.nodes);
        around = new int[2 * network.arcs];
        for (int arc = 0; arc < network.arcs; arc++) {
            around[next[network.from[arc]]++] = arc;
            around[next[network.to[arc]]++] = ~arc;
        }
        reached = new int[network.nodes];
        seen = new int[network.nodes];
        noted = new int[network.nodes];
        queue = new int[network.nodes];
        later = new int[network.nodes];
    }

    /** Hears of every change, also of those taken back. */
    public interface Listener {
        void changed(int arc, int by);
    }

    /** What it costs to send packets along an arc. Going back along an arc in use is always free. */
    public interface Toll {
        int FREE = 0;
        int PAID = 1;
        int BARRED = 2;

        int of(int arc);
    }

    public int flow(int arc) {
        return flow[arc];
    }

    public int[] flows() {
        return flow.clone();
    }

    /**
     * Takes packets off an arc and sends them another way; as many as fit on the first way found.
     *
     * @param mostTolls how many tolls may be paid on it
     * @return whether there is such a way
     */
    public boolean divert(int arc, Toll toll, int mostTolls) {
        return shift(arc, network.from[arc], network.to[arc], flow[arc] - low[arc], -1, toll, mostTolls);
    }

    /** Sends more packets along an arc and back another way without toll. @return whether there is such a way */
    public boolean raise(int arc, Toll toll) {
        return shift(arc, network.to[arc], network.from[arc], high[arc] - flow[arc], 1, toll, 0);
    }

    /** Diverts until no more than so many packets go along an arc. @return whether that was possible */
    public boolean lowerTo(int arc, int packets, Toll toll) {
        while (flow[arc] > packets) {
            if (!divert(arc, toll, 0)) {
                return false;
            }
        }
        return true;
    }

    /** Where to come back to. */
    public int mark() {
        return changes;
    }

    /** Takes back all changes since the mark. */
    public void back(int mark) {
        while (changes > mark) {
            changes--;
            flow[changedArc[changes]] -= changedBy[changes];
            listener.changed(changedArc[changes], -changedBy[changes]);
        }
    }

    /** Forgets the past. */
    public void settle() {
        changes = 0;
    }

    /** Takes another flow, and forgets the past. */
    public void become(int[] other) {
        for (int arc = 0; arc < other.length; arc++) {
            int by = other[arc] - flow[arc];
            if (by != 0) {
                flow[arc] += by;
                listener.changed(arc, by);
            }
        }
        settle();
    }

    private boolean shift(int arc, int source, int sink, int most, int sign, Toll toll, int mostTolls) {
        if (most <= 0 || !find(source, sink, arc, toll, mostTolls)) {
            return false;
        }
        int packets = most;
        for (int node = sink; node != source; node = behind(reached[node])) {
            packets = Math.min(packets, room(reached[node]));
        }
        for (int node = sink; node != source; node = behind(reached[node])) {
            int step = reached[node];
            change(step >= 0 ? step : ~step, step >= 0 ? packets : -packets);
        }
        change(arc, sign * packets);
        return true;
    }

    private void change(int arc, int by) {
        if (changes == changedArc.length) {
            changedArc = Arrays.copyOf(changedArc, 2 * changes);
            changedBy = Arrays.copyOf(changedBy, 2 * changes);
        }
        changedArc[changes] = arc;
        changedBy[changes++] = by;
        flow[arc] += by;
        listener.changed(arc, by);
    }

    private int room(int step) {
        return step >= 0 ? high[step] - flow[step] : flow[~step] - low[~step];
    }

    private int behind(int step) {
        return step >= 0 ? network.from[step] : network.to[~step];
    }

    private int ahead(int step) {
        return step >= 0 ? network.to[step] : network.from[~step];
    }

    /** Breadth first: all that can be reached freely, then with one toll, and so on. */
    private boolean find(int source, int sink, int without, Toll toll, int mostTolls) {
        search++;
        seen[source] = search;
        queue[0] = source;
        int head = 0;
        int tail = 1;
        for (int paid = 0; head < tail; paid++) {
            int waiting = 0;
            while (head < tail) {
                int node = queue[head++];
                work.spend(first[node + 1] - first[node]);
                for (int k = first[node]; k < first[node + 1]; k++) {
                    int step = around[k];
                    int next = ahead(step);
                    if (seen[next] == search || room(step) <= 0 || step == without || step == ~without) {
                        continue;
                    }
                    int price = step >= 0 ? toll.of(step) : Toll.FREE;
                    if (price == Toll.FREE) {
                        seen[next] = search;
                        reached[next] = step;
                        queue[tail++] = next;
                        if (next == sink) {
                            return true;
                        }
                    } else if (price == Toll.PAID && paid < mostTolls && noted[next] != search) {
                        noted[next] = search;
                        later[waiting++] = step;
                    }
                }
            }
            for (int i = 0; i < waiting; i++) {
                int next = ahead(later[i]);
                noted[next] = NONE;
                if (seen[next] != search) {
                    seen[next] = search;
                    reached[next] = later[i];
                    queue[tail++] = next;
                }
            }
            if (seen[sink] == search) {
                return true;
            }
        }
        return false;
    }
}
