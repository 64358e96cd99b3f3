package org.glintery.api.stash;

import java.util.Optional;
import org.glintery.api.Stable;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.time.About;

/**
 * Moves drills.
 *
 * @param believed a person at the screen is believed: what is booked too low is made up from {@code found} in the
 *     same change; a script is not
 */
@Stable
public record MoveRequest(
        Drill drill,
        Optional<String> lot,
        Spot from,
        Spot to,
        Amount amount,
        String reason,
        Optional<About> happenedOn,
        boolean believed) {}
