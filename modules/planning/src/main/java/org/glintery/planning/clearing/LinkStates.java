package org.glintery.planning.clearing;

import org.glintery.planning.flow.Bounds;
import org.glintery.planning.flow.Residual;
import org.glintery.planning.flow.Work;

/**
 * What is decided about links and traders in a branch of a search, with a flow that keeps to it. Decisions are taken back
 * in the reverse order. Not safe for use by several threads.
 */
final class LinkStates {

    static final byte FREE = 0;
    /** Paid for, whether it is used or not. */
    static final byte OPEN = 1;

    static final byte CLOSED = 2;

    private final GivingRule rule;
    private final Bounds bounds;
    private final int[] link;
    private final int[][] lanesOf;
    private final byte[] state;
    private final int[] trail;
    private final Residual residual;
    private int decided;

    /** @param start any flow within the bounds */
    LinkStates(ParcelNetwork net, Bounds ranges, GivingRule rule, int[] start, Work work) {
        this.rule = rule;
        bounds = ranges.copy();
        link = net.links();
        lanesOf = net.lanesOfLinks();
        state = new byte[lanesOf.length];
        trail = new int[lanesOf.length];
        residual = new Residual(net.network(), bounds, start, (arc, by) -> {}, work);
        for (int l = 0; l < state.length; l++) {
            decideByRange(l);
        }
    }

    private void decideByRange(int l) {
        boolean empty = true;
        boolean needed = false;
        for (int arc : lanesOf[l]) {
            empty &= bounds.high()[arc] == 0;
            needed |= bounds.low()[arc] > 0;
        }
        if (empty || needed) {
            decide(l, empty ? CLOSED : OPEN);
        }
    }

    /** By link; not a copy. */
    byte[] all() {
        return state;
    }

    boolean isFree(int l) {
        return state[l] == FREE;
    }

    int decided() {
        return decided;
    }

    /** By arc, as narrowed by what was decided about traders; not a copy. */
    Bounds bounds() {
        return bounds;
    }

    Residual residual() {
        return residual;
    }

    void open(int l) {
        decide(l, OPEN);
    }

    /** Closes a link and sends what goes along it another way. @return whether there is one */
    boolean close(int l) {
        decide(l, CLOSED);
        for (int arc : lanesOf[l]) {
            if (!residual.lowerTo(arc, 0, this::toll)) {
                return false;
            }
        }
        return true;
    }

    /** Opens every free link without which there is no flow. */
    void openNeeded() {
        for (int l = 0; l < state.length; l++) {
            if (state[l] == FREE) {
                Mark mark = mark();
                boolean closable = close(l);
                back(mark);
                if (!closable) {
                    open(l);
                }
            }
        }
    }

    /** @return whether there is a flow in which the trader gives nothing */
    boolean giveNothing(int trader) {
        for (int arc : rule.offers()[trader]) {
            if (!residual.lowerTo(arc, 0, this::toll)) {
                return false;
            }
            bounds.high()[arc] = 0;
        }
        return true;
    }

    /** @return whether there is a flow in which the trader gets something */
    boolean getSomething(int trader) {
        int arc = rule.gets()[trader];
        if (residual.flow(arc) == 0 && !residual.raise(arc, this::toll)) {
            return false;
        }
        bounds.low()[arc] = Math.max(1, bounds.low()[arc]);
        return true;
    }

    /** Where to come back to; decisions about traders are taken back by {@link #restore}. */
    record Mark(int decided, int changes) {}

    Mark mark() {
        return new Mark(decided, residual.mark());
    }

    void back(Mark mark) {
        while (decided > mark.decided) {
            state[trail[--decided]] = FREE;
        }
        residual.back(mark.changes);
    }

    void restore(Bounds before) {
        System.arraycopy(before.low(), 0, bounds.low(), 0, before.low().length);
        System.arraycopy(before.high(), 0, bounds.high(), 0, before.high().length);
    }

    private void decide(int l, byte how) {
        state[l] = how;
        trail[decided++] = l;
    }

    private int toll(int arc) {
        return link[arc] >= 0 && state[link[arc]] == CLOSED ? Residual.Toll.BARRED : Residual.Toll.FREE;
    }
}
