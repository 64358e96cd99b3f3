package org.glintery.planning.flow;

import java.util.Arrays;

/**
 * The rooted tree of a network simplex: for each node its parent, the arc to it, and a potential such that every tree arc
 * has reduced cost 0. Children are kept in doubly linked lists, so that a branch is moved without touching the others.
 */
final class SpanningTree {

    private static final int NONE = -1;

    final int root;
    final int[] parent;
    /** The arc between a node and its parent. */
    final int[] arc;
    /** Whether that arc leads from the node up to its parent. */
    final boolean[] upward;

    final long[] potential;

    private final int[] depth;
    private final int[] firstChild;
    private final int[] next;
    private final int[] previous;
    private final int[] stack;

    /** A star: all nodes hang from the root, which is numbered behind them. The arcs are hung by the caller. */
    SpanningTree(int nodes) {
        root = nodes;
        parent = new int[nodes + 1];
        arc = new int[nodes + 1];
        upward = new boolean[nodes + 1];
        potential = new long[nodes + 1];
        depth = new int[nodes + 1];
        firstChild = new int[nodes + 1];
        next = new int[nodes + 1];
        previous = new int[nodes + 1];
        stack = new int[nodes + 1];
        Arrays.fill(firstChild, NONE);
        parent[root] = NONE;
        for (int node = 0; node < nodes; node++) {
            depth[node] = 1;
            attach(node, root);
        }
    }

    /** Where the ways from two nodes to the root meet. */
    int join(int one, int other) {
        int a = one;
        int b = other;
        while (a != b) {
            if (depth[a] >= depth[b]) {
                a = parent[a];
            } else {
                b = parent[b];
            }
        }
        return a;
    }

    /**
     * Cuts the branch above {@code top} and hangs it, turned so that {@code node} is its top, under {@code under} by the
     * arc, raising all its potentials.
     *
     * @return how many nodes moved
     */
    int rehang(int top, int node, int under, int byArc, boolean leadsUp, long raise) {
        int child = node;
        int newParent = under;
        int newArc = byArc;
        boolean newUpward = leadsUp;
        while (true) {
            int oldParent = parent[child];
            int oldArc = arc[child];
            boolean oldUpward = upward[child];
            detach(child);
            attach(child, newParent);
            arc[child] = newArc;
            upward[child] = newUpward;
            if (child == top) {
                break;
            }
            newParent = child;
            newArc = oldArc;
            newUpward = !oldUpward;
            child = oldParent;
        }
        return refresh(node, raise);
    }

    /** Computes all potentials anew from the costs of the tree's arcs; the root keeps 0. */
    void price(long[] cost) {
        int size = 0;
        stack[size++] = root;
        potential[root] = 0;
        while (size > 0) {
            int node = stack[--size];
            for (int child = firstChild[node]; child != NONE; child = next[child]) {
                potential[child] = potential[node] + (upward[child] ? -cost[arc[child]] : cost[arc[child]]);
                stack[size++] = child;
            }
        }
    }

    private int refresh(int branch, long raise) {
        int size = 0;
        int moved = 0;
        stack[size++] = branch;
        while (size > 0) {
            int node = stack[--size];
            moved++;
            potential[node] += raise;
            depth[node] = depth[parent[node]] + 1;
            for (int child = firstChild[node]; child != NONE; child = next[child]) {
                stack[size++] = child;
            }
        }
        return moved;
    }

    private void attach(int node, int under) {
        parent[node] = under;
        previous[node] = NONE;
        next[node] = firstChild[under];
        if (firstChild[under] != NONE) {
            previous[firstChild[under]] = node;
        }
        firstChild[under] = node;
    }

    private void detach(int node) {
        if (previous[node] == NONE) {
            firstChild[parent[node]] = next[node];
        } else {
            next[previous[node]] = next[node];
        }
        if (next[node] != NONE) {
            previous[next[node]] = previous[node];
        }
    }
}
