package org.glintery.planning.clearing;

import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.glintery.planning.flow.Bounds;
import org.glintery.planning.flow.Work;
import org.glintery.planning.program.CertainBound;

/**
 * Second stage of a clearing: among the plans of a network one with least postage and fewest parcels. Prices prove a first
 * bound and show good links, and local search improves on that. Networks that are not too large are then searched to the
 * end, or as far as the work goes.
 */
final class FewestParcels {

    /** The most lanes and links that are searched exactly. */
    private static final int MOST_COLUMNS = 3_000;

    private static final double FOR_PRICES = 0.25;
    private static final double FOR_DESCENT = 0.2;
    private static final int PASSES = 40;
    private static final int PASSES_OF_A_HINT = 10;

    private final ParcelNetwork net;
    private final GivingRule rule;
    private final CheapestAim aim;
    private final Work work;
    private final boolean searchable;
    private Bounds ranges;
    private long least;

    /** @param start a plan that keeps the rule */
    FewestParcels(ParcelNetwork net, GivingRule rule, int[] start, Work work) {
        this.net = net;
        this.rule = rule;
        this.work = work;
        aim = new CheapestAim(net, rule, start);
        long packets = net.round().wants().stream().mapToLong(Want::packets).sum();
        searchable = net.lanes().size() + net.ways().size() <= MOST_COLUMNS && CertainBound.handles(packets);
        ranges = net.network().bounds();
        least = leastOfAll();
    }

    /**
     * What was found.
     *
     * @param flow the plan
     * @param charges what it costs
     * @param least no plan of the network costs less
     * @param ranges between which any plan lies, arc by arc
     * @param searched whether the network is small enough to be searched to the end
     */
    record Found(int[] flow, long charges, long least, Bounds ranges, boolean searched) {

        boolean proven() {
            return charges == least;
        }
    }

    Found find() {
        if (searchable) {
            ranges = LaneRanges.of(net.network(), aim.best(), work);
        }
        boolean priced = net.complete() && LinkPrices.handles(net);
        Work forPrices = work.share(FOR_PRICES);
        LinkPrices prices = priced ? new LinkPrices(net, forPrices) : null;
        if (priced) {
            follow(prices);
        }
        Work forDescent = work.share(searchable ? FOR_DESCENT : 1);
        descend(aim.best(), searchable ? PASSES : Integer.MAX_VALUE, forDescent);
        work.takeBack(forDescent);
        if (priced) {
            least = Math.max(least, prices.improve(aim.goal()));
        }
        work.takeBack(forPrices);
        if (searchable && least < aim.goal()) {
            least = Math.max(least, search());
        }
        return new Found(aim.best(), aim.goal(), Math.min(least, aim.goal()), ranges, searchable);
    }

    private long search() {
        return new ParcelSearch(net, ranges, rule, aim.best(), aim, Optional.empty(), work).run();
    }

    private void follow(LinkPrices prices) {
        least = Math.max(least, prices.improve(aim.goal()));
        double[] usage = prices.usage();
        new GuidedPlans(net, ranges, rule, work)
                .plan(l -> usage[l], 0)
                .ifPresent(flow -> descend(flow, PASSES_OF_A_HINT, work));
    }

    private void descend(int[] start, int passes, Work some) {
        ParcelDescent descent = new ParcelDescent(net, ranges, rule, start, 1, some);
        descent.run(passes);
        aim.consider(descent.flow());
    }

    /** Whoever must get something gets a parcel, and whoever must give something sends one. */
    private long leastOfAll() {
        int[] low = net.network().low;
        long getting = IntStream.range(0, net.wantArc().length)
                .filter(j -> net.wantArc()[j] >= 0 && low[net.wantArc()[j]] > 0)
                .map(net::traderOfWant)
                .distinct()
                .count();
        long giving = IntStream.range(0, net.offerArc().length)
                .filter(i -> net.offerArc()[i] >= 0 && low[net.offerArc()[i]] > 0)
                .map(net::traderOfOffer)
                .distinct()
                .count();
        return Math.max(getting, giving)
                * LongStream.of(net.charges().charge()).min().orElse(0);
    }
}
