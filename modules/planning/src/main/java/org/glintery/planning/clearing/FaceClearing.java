package org.glintery.planning.clearing;

import java.util.List;
import java.util.Optional;
import org.glintery.planning.flow.Work;

/** Settles which of the best plans of a face is taken: what stays as it was, fewest parcels, and the fairest. */
final class FaceClearing {

    private static final double FOR_FAIRNESS = 0.1;
    private static final double FOR_FAIRNESS_OF_THE_REST = 0.2;
    private static final int MOST_LANES_FOR_FAIRNESS = 50_000;

    private final Round round;
    private final List<KindLines> kinds;
    private final Face face;
    private final Work work;

    FaceClearing(Round round, List<KindLines> kinds, Face face, Work work) {
        this.round = round;
        this.kinds = kinds;
        this.face = face;
        this.work = work;
    }

    /**
     * The plan that is taken.
     *
     * @param found its parcels, and {@code charges} what these figures mean
     * @param leastUnfair no plan that costs as little is less unfair
     */
    record Settled(
            List<Sent> plan, FewestParcels.Found found, Charges charges, long unfairness, long leastUnfair, int kept) {

        long postage() {
            return charges.postage(found.charges());
        }

        long parcels() {
            return charges.parcels(found.charges());
        }

        long leastPostage() {
            return found.proven() ? postage() : Math.min(postage(), charges.leastPostage(found.least()));
        }

        /** The fewest parcels of any plan of the face that has this postage. */
        long fewestParcels(long postage) {
            return charges.fewestParcels(found.least(), postage);
        }
    }

    /** Starts from a plan of this face. */
    Settled settle(List<Sent> plan) {
        return settle(new KeptTransfers(List.of(), plan));
    }

    /**
     * Starts from an earlier clearing, and leaves of it what can stay.
     *
     * @param plan a best plan, not necessarily of this face
     * @return empty when no plan of the face keeps the rule that nobody gives for nothing
     */
    Optional<Settled> settleAfter(List<Transfer> before, List<Sent> plan) {
        Round straight = new Round(
                round.traders(), round.offers(), round.wants(), round.postage().withoutOrganiser());
        ParcelNetwork net = ParcelNetworkBuilder.build(straight, kinds, face, plan);
        return KeptTransfers.of(net, before, work).map(this::settle);
    }

    private Settled settle(KeptTransfers start) {
        ParcelNetwork net = ParcelNetworkBuilder.build(round, kinds, face, start.plan());
        ParcelFlow flows = new ParcelFlow(net);
        ParcelNetwork keeping = net.keeping(flows.flow(start.kept()));
        GivingRule rule = GivingRule.of(round, net.offerArc(), net.gets());
        Work forFairness = work.share(FOR_FAIRNESS);
        FewestParcels.Found found = new FewestParcels(keeping, rule, flows.flow(start.plan()), work).find();
        forFairness.takeBack(work.share(FOR_FAIRNESS_OF_THE_REST));
        FairestFlow fairest = new FairestFlow(keeping, rule, forFairness);
        FairestAim aim = new FairestAim(keeping, fairest, found.flow());
        aim.consider(found.flow());
        long least = leastUnfair(keeping, rule, found, fairest, aim, forFairness);
        return new Settled(flows.plan(aim.best()), found, net.charges(), aim.goal(), least, start.packets());
    }

    private static long leastUnfair(
            ParcelNetwork net,
            GivingRule rule,
            FewestParcels.Found found,
            FairestFlow fairest,
            FairestAim aim,
            Work work) {
        if (aim.goal() == 0 || net.lanes().size() > MOST_LANES_FOR_FAIRNESS) {
            return 0;
        }
        long least = fairest.least(found.ranges());
        Charges charges = net.charges();
        ParcelProgram.Limit limit =
                new ParcelProgram.Limit(charges.postage(found.charges()), charges.parcels(found.charges()));
        if (least < aim.goal() && found.proven() && found.searched() && limit.isHandled(charges)) {
            least = Math.max(
                    least,
                    new ParcelSearch(net, found.ranges(), rule, found.flow(), aim, Optional.of(limit), work).run());
        }
        return Math.min(least, aim.goal());
    }
}
