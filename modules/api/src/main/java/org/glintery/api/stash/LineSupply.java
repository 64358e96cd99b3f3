package org.glintery.api.stash;

import java.util.Optional;
import org.glintery.api.Stable;
import org.glintery.api.ledger.Balance;

/**
 * How one legend line stands. Lines that share a drill are told of together on the first of them.
 *
 * @param laid on the canvas
 * @param atHand in bags and pockets, of this drill, not reserved to anything else
 * @param missing how many are still wanted beyond what is at hand, as unsure as what is; zero when enough, empty when not known
 */
@Stable
public record LineSupply(int index, LegendLine line, Balance laid, Balance atHand, Optional<Balance> missing) {}
