package org.glintery.activework;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.LedgerAction.Movement;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.storage.DrillPlaces;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/**
 * Books drills that a sitting names by their symbols: from the piece's pockets, then its bag, onto its canvas. The maker
 * who laid more than is booked there is believed: the rest was there, so it is found. A sitting that is told anew is
 * taken back first, so that nothing is found of what was only mistyped. Used once; not safe for several threads.
 */
final class SymbolBooking {

    private final View view;
    private final UUID sitting;
    private final UUID piece;
    private final String title;
    private final About on;
    private final DrillPlaces places;
    private final Drawing drawing;
    private final FoundOnCanvas found;
    private final List<SittingBooking.Step> steps = new ArrayList<>();

    SymbolBooking(View view, UUID sitting, UUID piece, String title, About on) {
        this.view = view;
        this.sitting = sitting;
        this.piece = piece;
        this.title = title;
        this.on = on;
        this.places = new DrillPlaces(view, piece);
        this.drawing = new Drawing(view);
        this.found = new FoundOnCanvas(view, piece);
    }

    /**
     * Takes back what the sitting booked before and books what it tells now; what it told before without booking it
     * stays unbooked. Gives warnings.
     */
    List<String> book(ChangeSet.Builder change, Map<String, Long> before, Map<String, Long> now) {
        Optional<Stored<SittingBooking>> old = view.find(SittingBooking.TYPE, sitting);
        SittingBooking taken = old.map(Stored::value).orElse(new SittingBooking(0, List.of(), List.of()));
        Map<Drill, Long> back = new SittingTakenBack(piece, title, on, places, drawing, found).takeBack(change, old);
        List<String> warnings = new ArrayList<>();
        for (LegendLine line : firstLines()) {
            String symbol = line.symbol();
            long unbooked = Math.max(0, before.getOrDefault(symbol, 0L) - taken.booked(symbol));
            long count = now.getOrDefault(symbol, 0L) - unbooked;
            if (count > 0) {
                lay(change, symbol, line.drill(), count).ifPresent(warnings::add);
            }
        }
        found.flag(change);
        keep(change, old, setAside(change, taken, back));
        return warnings;
    }

    /** A line for each symbol: a misprinted legend may repeat one. */
    private List<LegendLine> firstLines() {
        Map<String, LegendLine> lines = new LinkedHashMap<>();
        Legend.of(view, piece).lines().forEach(line -> lines.putIfAbsent(line.symbol(), line));
        return List.copyOf(lines.values());
    }

    @Messages({
        "# {0} - title",
        "SymbolBooking.laid=laid on {0}",
        "# {0} - title",
        "SymbolBooking.found=found: laid on {0}, more than was booked",
        "# {0} - symbol",
        "# {1} - how many more",
        "# {2} - the same in figures",
        "# {3} - title",
        "SymbolBooking.more=Of {0}, {1,choice,1#1 more was laid than was booked in the pockets and the bag of {3}. It is booked as found.|1<{2} more were laid than were booked in the pockets and the bag of {3}. They are booked as found.}"
    })
    private Optional<String> lay(ChangeSet.Builder change, String symbol, Drill drill, long count) {
        long left = count;
        for (Spot spot : places.of(symbol, drill)) {
            long taken = drawing.take(change, spot, drill, left);
            if (taken > 0) {
                lay(change, symbol, drill, spot, taken, Bundle.SymbolBooking_laid(title));
                left -= taken;
            }
        }
        if (left == 0) {
            return Optional.empty();
        }
        found.add(drill, left);
        lay(change, symbol, drill, Spot.FOUND, left, Bundle.SymbolBooking_found(title));
        return Optional.of(Bundle.SymbolBooking_more(symbol, left, Balance.grouped(left), title));
    }

    private void lay(ChangeSet.Builder change, String symbol, Drill drill, Spot from, long count, String reason) {
        UUID id = UUID.randomUUID();
        change.post(new Movement(
                id,
                drill,
                Optional.empty(),
                from,
                new Spot.OnCanvas(piece),
                Amount.counted(count),
                reason,
                Optional.of(on),
                Optional.empty()));
        steps.add(new SittingBooking.Step(id, symbol, drill, from, count));
    }

    private List<SittingBooking.Released> setAside(
            ChangeSet.Builder change, SittingBooking taken, Map<Drill, Long> back) {
        Map<Drill, Long> restored = new LinkedHashMap<>();
        taken.released().forEach(one -> restored.merge(one.drill(), one.count(), Long::sum));
        Set<Drill> drills = new LinkedHashSet<>(restored.keySet());
        taken.steps().forEach(step -> drills.add(step.drill()));
        steps.forEach(step -> drills.add(step.drill()));
        List<SittingBooking.Released> released = new ArrayList<>();
        for (Drill drill : drills) {
            long fromHouse = sum(drill, true);
            long gone = new SetAside(view, piece)
                    .drawDown(
                            change,
                            drill,
                            restored.getOrDefault(drill, 0L) + found.toldSince(drill),
                            sum(drill, false),
                            back.getOrDefault(drill, 0L) - fromHouse);
            if (gone > 0) {
                released.add(new SittingBooking.Released(drill, gone));
            }
        }
        return released;
    }

    private long sum(Drill drill, boolean onlyFromTheHouse) {
        return steps.stream()
                .filter(step -> step.drill().equals(drill))
                .filter(step -> !onlyFromTheHouse || step.from().inTheHouse())
                .mapToLong(SittingBooking.Step::count)
                .sum();
    }

    private void keep(
            ChangeSet.Builder change, Optional<Stored<SittingBooking>> old, List<SittingBooking.Released> released) {
        if (old.isPresent()) {
            int putAs = old.get().version() + 1;
            change.replace(SittingBooking.TYPE, old.get(), new SittingBooking(putAs, steps, released));
        } else if (!steps.isEmpty()) {
            change.create(SittingBooking.TYPE, sitting, new SittingBooking(1, steps, released));
        }
    }
}
