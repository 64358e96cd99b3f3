package org.glintery.activework;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.LedgerAction.Movement;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.View;

/**
 * Books drills that a sitting names by their symbols: from the piece's pockets, then its bag, onto its canvas. The maker
 * who laid more than is booked there is believed: the rest was there, so it is found. Used once; not safe for several
 * threads.
 */
final class SymbolBooking {

    private final View view;
    private final UUID piece;
    private final String title;
    private final About on;
    private final DrillPlaces places;
    private final Drawing drawing;

    SymbolBooking(View view, UUID piece, String title, About on) {
        this.view = view;
        this.piece = piece;
        this.title = title;
        this.on = on;
        this.places = new DrillPlaces(view, piece);
        this.drawing = new Drawing(view);
    }

    /** Books what is new since before; what became less goes back. Gives warnings. */
    List<String> book(ChangeSet.Builder change, Map<String, Long> before, Map<String, Long> now) {
        List<String> warnings = new ArrayList<>();
        Map<Drill, Long> laid = new LinkedHashMap<>();
        for (LegendLine line : firstLines()) {
            String symbol = line.symbol();
            long more = now.getOrDefault(symbol, 0L) - before.getOrDefault(symbol, 0L);
            if (more > 0) {
                lay(change, symbol, line.drill(), more).ifPresent(warnings::add);
                laid.merge(line.drill(), more, Long::sum);
            } else if (more < 0) {
                laid.merge(line.drill(), -takeBack(change, symbol, line.drill(), -more), Long::sum);
            }
        }
        laid.forEach((drill, more) -> new SetAside(view, piece).drawDown(change, drill, more));
        return warnings;
    }

    /** A line for each symbol: a misprinted legend may repeat one. */
    private List<LegendLine> firstLines() {
        Map<String, LegendLine> lines = new LinkedHashMap<>();
        Legend.of(view, piece).lines().forEach(line -> lines.putIfAbsent(line.symbol(), line));
        return List.copyOf(lines.values());
    }

    private Optional<String> lay(ChangeSet.Builder change, String symbol, Drill drill, long count) {
        Spot canvas = new Spot.OnCanvas(piece);
        long left = count;
        for (Spot spot : places.of(symbol, drill)) {
            long taken = drawing.take(change, spot, drill, left);
            if (taken > 0) {
                change.post(moved(drill, spot, canvas, taken, "laid on " + title));
                left -= taken;
            }
        }
        if (left == 0) {
            return Optional.empty();
        }
        change.post(moved(drill, Spot.FOUND, canvas, left, "found: laid on " + title + ", more than was booked"));
        return Optional.of(
                "Of " + symbol + ", " + left + " more were laid than were booked in the pockets and the bag of " + title
                        + ". They are booked as found.");
    }

    /** Gives how many came back into the house. */
    private long takeBack(ChangeSet.Builder change, String symbol, Drill drill, long count) {
        Spot canvas = new Spot.OnCanvas(piece);
        long taken = drawing.take(change, canvas, drill, count);
        Optional<Spot> home = places.of(symbol, drill).stream().findFirst();
        if (taken > 0) {
            change.post(moved(drill, canvas, home.orElse(Spot.FOUND), taken, "not laid on " + title + " after all"));
        }
        return home.isPresent() ? taken : 0;
    }

    private Movement moved(Drill drill, Spot from, Spot to, long count, String reason) {
        return new Movement(
                UUID.randomUUID(),
                drill,
                Optional.empty(),
                from,
                to,
                Amount.counted(count),
                reason,
                Optional.of(on),
                Optional.empty());
    }
}
