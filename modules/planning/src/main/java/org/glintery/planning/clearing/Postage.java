package org.glintery.planning.clearing;

import java.util.Map;
import java.util.OptionalInt;
import org.glintery.api.Preview;

/**
 * What parcels cost, in whole units of any currency.
 *
 * @param usual of a parcel whose way has no price of its own
 * @param special prices by way
 * @param organiser the trader through whom packets may go as well: one parcel to them, one on from them
 */
@Preview(since = "1.0")
public record Postage(long usual, Map<Way, Long> special, OptionalInt organiser) {
    public Postage {
        special = Map.copyOf(special);
    }

    /** The same for every parcel, sent directly. */
    public static Postage flat(long each) {
        return new Postage(each, Map.of(), OptionalInt.empty());
    }

    /** The same with packets going also through this trader. */
    public Postage through(int trader) {
        return new Postage(usual, special, OptionalInt.of(trader));
    }

    /** The same with all packets sent directly. */
    public Postage withoutOrganiser() {
        return new Postage(usual, special, OptionalInt.empty());
    }

    public long of(Way way) {
        return special.getOrDefault(way, usual);
    }
}
