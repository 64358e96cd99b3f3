package org.glintery.demo;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;

/** What made pieces left: a repair packet for each, then a pocket of the leftovers' case or a bag for each drill. */
final class Leftovers {
    private static final long REPAIR_DRILLS = 20;

    private final Booking booking;
    private final Cases cases;
    private final Map<Drill, Spot> pockets = new HashMap<>();
    private final Map<Drill, Long> inPockets = new HashMap<>();
    private final Map<Drill, Spot> bags = new HashMap<>();

    Leftovers(Booking booking, Cases cases) {
        this.booking = booking;
        this.cases = cases;
    }

    void sort(PieceInMaking piece, Spot bag, LocalDate on) {
        Spot packet = booking.repairPacket(piece);
        String reason = "kit down of " + piece.told().title();
        for (int line = 0; line < piece.legend().size(); line++) {
            Drill drill = piece.drill(line);
            long left = piece.leftOver(line);
            long kept = Math.min(REPAIR_DRILLS, left);
            booking.move(drill, bag, packet, kept, reason, on);
            if (left > kept) {
                booking.move(drill, bag, home(drill, left - kept), left - kept, reason, on);
            }
        }
    }

    /** A pocket of its own with room for all of them, else a bag. The mixed pocket at the end of the case is kept free. */
    private Spot home(Drill drill, long count) {
        if (!pockets.containsKey(drill) && cases.free(Cases.LEFTOVERS) > 1) {
            cases.next(Cases.LEFTOVERS).ifPresent(pocket -> pockets.put(drill, pocket));
        }
        if (pockets.containsKey(drill) && inPockets.getOrDefault(drill, 0L) + count <= Cases.CAPACITY) {
            inPockets.merge(drill, count, Long::sum);
            return pockets.get(drill);
        }
        return bags.computeIfAbsent(drill, d -> booking.looseBag(d.card() + " " + d.code()));
    }
}
