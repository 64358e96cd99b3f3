package org.glintery.planning.clearing;

import java.util.BitSet;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/** Least unfairness among plans that cost what the best one costs. */
final class FairestAim implements Aim {

    private final ParcelNetwork net;
    private final FairestFlow fairest;
    private final ParcelFlow flows;
    private final long charges;
    private final Set<BitSet> seen = new HashSet<>();
    private int[] best;
    private long unfairness;

    /** @param start a plan that keeps the rule and costs least */
    FairestAim(ParcelNetwork net, FairestFlow fairest, int[] start) {
        this.net = net;
        this.fairest = fairest;
        flows = new ParcelFlow(net);
        best = start;
        charges = net.charge(start);
        unfairness = unfairness(start);
    }

    int[] best() {
        return best;
    }

    @Override
    public long goal() {
        return unfairness;
    }

    @Override
    public void consider(int[] flow) {
        boolean[] barred = net.used(flow);
        BitSet used = new BitSet();
        for (int l = 0; l < barred.length; l++) {
            used.set(l, barred[l]);
            barred[l] = !barred[l];
        }
        if (net.charge(flow) > charges || !seen.add(used)) {
            return;
        }
        Optional<int[]> plan = fairest.plan(net.network().bounds(), barred);
        if (plan.isPresent() && unfairness(plan.get()) < unfairness) {
            best = plan.get();
            unfairness = unfairness(best);
        }
    }

    private long unfairness(int[] flow) {
        return Unfairness.of(net.round(), flows.plan(flow));
    }
}
