package org.glintery.api.workshop;

import org.glintery.api.Stable;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;

/** What a change was computed from. If it no longer holds, the change is refused with {@code out-of-date}. */
@Stable
public sealed interface Precondition {

    /** @param version 0 when the document must not exist */
    record DocumentAt(DocRef ref, int version) implements Precondition {}

    record BalanceAt(Spot spot, Drill drill, Balance balance) implements Precondition {}
}
