package org.glintery.demo;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;

/** What made pieces left: a repair packet for each, then a pocket of the leftovers' case or a bag for each drill. */
final class Leftovers {
    private static final long REPAIR_DRILLS = 20;

    private final Booking booking;
    private final Cases cases;
    private final Map<Drill, Spot> homes = new HashMap<>();

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
                booking.move(drill, bag, homes.computeIfAbsent(drill, this::home), left - kept, reason, on);
            }
        }
    }

    /** The mixed pocket at the end of the case is kept free. */
    private Spot home(Drill drill) {
        Optional<Spot> pocket =
                cases.free(Cases.LEFTOVERS) > 1 ? cases.next(Cases.LEFTOVERS) : Optional.empty();
        return pocket.orElseGet(() -> booking.looseBag(drill.card() + " " + drill.code()));
    }
}
