package org.glintery.api.storage;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.Stable;
import org.glintery.api.activework.CompletionPart;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;

/** Where things are. Methods compute from the view and change nothing: apply what they give. Any thread. */
@Stable
public interface Storage extends CompletionPart {

    /**
     * Adds a holder. Refused with {@code no-name}, {@code name-taken}, {@code no-pockets}, {@code pocket-twice} or
     * {@code out-of-range}.
     */
    Result<ChangeSet> addHolder(View view, UUID id, Holder holder);

    /**
     * Replaces a holder. Refused as {@link #addHolder} is, with {@code no-holder}, or with {@code in-use} when a pocket in
     * which drills lie would go.
     */
    Result<ChangeSet> editHolder(View view, UUID id, Holder holder);

    /** Removes an empty holder. Refused with {@code no-holder}, or {@code in-use} while drills or a piece are in it. */
    Result<ChangeSet> removeHolder(View view, UUID id);

    /**
     * Plans to put a piece's drills into a holder, symbols in order, one pocket each, further pockets only
     * where one is too small; what does not fit goes into bags. Overfilling warns. Refused with {@code gone}, {@code kitted-up} when the
     * piece is in a holder already, {@code no-legend} or {@code no-pocket}.
     */
    Result<KitUpPlan> planKitUp(View view, UUID piece, UUID holder, Optional<About> on);

    /**
     * Plans to clear a piece's holder: so many drills a colour into a repair packet kept with the piece, the
     * rest into one bag a colour. Refused with {@code gone}, {@code not-kitted-up} or {@code out-of-range}.
     */
    Result<KitDownPlan> planKitDown(View view, UUID piece, long repairDrills, Optional<About> on);

    /**
     * Plans the same for a piece that is made or let go and sits in no holder: for what is left in the bags of its
     * kit. Refused when nothing is.
     */
    Result<LeftoversPlan> planLeftovers(View view, UUID piece, long repairDrills, Optional<About> on);

    /** Where a drill is found by code, name or symbol, most first. */
    List<Whereabouts> find(View view, String text);

    /** Holders that can be kitted into: nothing lies in them, no piece sits there, and they are not lent. */
    List<Stored<Holder>> freeHolders(View view);

    /** @param seats in symbol order */
    record KitUpPlan(ChangeSet change, List<KitUp.Seat> seats, int pockets, int bags) {
        public KitUpPlan {
            seats = List.copyOf(seats);
        }
    }

    /** @param freed the holder that is free again */
    record KitDownPlan(ChangeSet change, UUID freed, List<Step> steps) {
        public KitDownPlan {
            steps = List.copyOf(steps);
        }
    }

    /** What is done with the drills that are left in the bags of a kit. */
    record LeftoversPlan(ChangeSet change, List<Step> steps) {
        public LeftoversPlan {
            steps = List.copyOf(steps);
        }
    }

    /** One thing to do with the hands: so many of a drill from here to there. */
    record Step(Drill drill, Spot from, Spot to, Balance amount) {}

    /** A drill in a spot. */
    record Whereabouts(Drill drill, Spot spot, Balance balance, String words) {}
}
