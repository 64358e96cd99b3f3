package org.glintery.planning.clearing;

import java.util.List;
import org.glintery.api.Preview;

/**
 * A cleared round: who sends what to whom, and what is proven about it. Each stage is proven when its figure meets its
 * bound.
 *
 * @param transfers sorted by who gives, who gets, and the kind
 * @param met the packets that meet wants, priority by priority
 * @param wantsBound no plan meets wants with more packets in all without meeting fewer of a higher priority
 * @param postage of all parcels, {@code postageBound} no plan that meets the same wants has less
 * @param parcels how many there are, {@code parcelsBound} no plan with that postage has fewer
 * @param plainParcels how many there would be if nobody thought of parcels
 * @param unfairness the squares of the differences between given and received packets, summed up; what someone gives more
 *     who may give for nothing is not counted
 * @param unfairnessBound no plan that meets the same wants with the same postage and parcels has less
 * @param kept packets that go the same way as in the earlier clearing
 */
@Preview(since = "1.0")
public record Clearing(
        List<Transfer> transfers,
        List<Met> met,
        int wantsBound,
        long postage,
        long postageBound,
        long parcels,
        long parcelsBound,
        long plainParcels,
        long unfairness,
        long unfairnessBound,
        int kept) {

    public Clearing {
        transfers = List.copyOf(transfers);
        met = List.copyOf(met);
    }

    /** How many packets meet wants of a priority, out of how many. */
    public record Met(int priority, int packets, int wanted) {}

    /** The packets that meet wants; as many are sent. */
    public int wantsMet() {
        return met.stream().mapToInt(Met::packets).sum();
    }

    public boolean wantsProven() {
        return wantsMet() == wantsBound;
    }

    public boolean parcelsProven() {
        return wantsProven() && postage == postageBound && parcels == parcelsBound;
    }

    public boolean fairestProven() {
        return parcelsProven() && unfairness == unfairnessBound;
    }
}
