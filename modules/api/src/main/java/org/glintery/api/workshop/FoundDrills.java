package org.glintery.api.workshop;

import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Preview;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;

/**
 * The flag of drills that were there though they were not booked: a maker who takes or lays more than is booked is
 * believed, and the rest comes from {@code found}. All of these documents together list what the books had too low. It
 * ends once the spot is counted, or once it is told how many came. Any thread.
 *
 * @param at where the books were short: the bag or pocket they were taken from, or the canvas they were laid on
 * @param count how many were found in all
 */
@Preview(since = "1.0")
public record FoundDrills(Drill drill, Spot at, long count) {

    public static final DocumentType<FoundDrills> TYPE = DocumentType.of("ledger", "found-drills", FoundDrills.class);

    public FoundDrills {
        if (count <= 0) {
            throw new IllegalArgumentException("count out of range: " + count);
        }
    }

    /** How many were found there and are not explained yet. */
    public static long at(View view, Spot at, Drill drill) {
        return stored(view, at, drill).map(found -> found.value().count()).orElse(0L);
    }

    /** Flags so many more, or with a negative number so many fewer; the flag goes when none is left. */
    public static void add(ChangeSet.Builder change, View view, Spot at, Drill drill, long more) {
        Optional<Stored<FoundDrills>> old = stored(view, at, drill);
        long count = Math.max(0, at(view, at, drill) + more);
        if (more == 0 || (count == 0 && old.isEmpty())) {
            return;
        }
        if (count == 0) {
            change.remove(TYPE.ref(idOf(at, drill)));
            return;
        }
        FoundDrills now = new FoundDrills(drill, at, count);
        old.ifPresentOrElse(
                stored -> change.replace(TYPE, stored, now), () -> change.create(TYPE, idOf(at, drill), now));
    }

    private static Optional<Stored<FoundDrills>> stored(View view, Spot at, Drill drill) {
        return view.find(TYPE, idOf(at, drill));
    }

    private static UUID idOf(Spot at, Drill drill) {
        return ByName.idFor(TYPE, at + "/" + drill.key());
    }
}
