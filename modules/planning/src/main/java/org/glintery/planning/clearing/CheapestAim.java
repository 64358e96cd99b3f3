package org.glintery.planning.clearing;

/** Least charges. */
final class CheapestAim implements Aim {

    private final ParcelNetwork net;
    private final GivingRule rule;
    private int[] best;
    private long charges;

    /** @param start a plan that keeps the rule */
    CheapestAim(ParcelNetwork net, GivingRule rule, int[] start) {
        this.net = net;
        this.rule = rule;
        best = start;
        charges = net.charge(start);
    }

    int[] best() {
        return best;
    }

    @Override
    public long goal() {
        return charges;
    }

    @Override
    public void consider(int[] flow) {
        long sum = net.charge(flow);
        if (sum < charges && rule.isKept(flow)) {
            charges = sum;
            best = flow;
        }
    }
}
