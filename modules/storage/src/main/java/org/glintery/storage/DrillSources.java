package org.glintery.storage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.storage.DrillPlaces;
import org.glintery.api.workshop.Reservation;
import org.glintery.api.workshop.View;

/** Which bags a piece's drills are taken from: those of its kit whole, others only for what is missing. */
final class DrillSources {

    /**
     * Drills in a bag that are for the piece.
     *
     * @param there all that lies there
     * @param wanted how many of these are taken; all when they are the kit's own
     * @param own whether the bag is the kit's: only of such a bag an uncounted heap is the piece's
     */
    record Portion(Spot spot, Balance there, long wanted, boolean own) {}

    private final View view;
    private final UUID piece;
    private final DrillPlaces places;

    DrillSources(View view, UUID piece) {
        this.view = view;
        this.piece = piece;
        this.places = new DrillPlaces(view, piece);
    }

    List<Spot> kitBags() {
        return places.kitBags();
    }

    List<Portion> of(Drill drill) {
        List<Portion> portions = new ArrayList<>();
        for (Spot bag : kitBags()) {
            Balance there = view.balance(bag, drill);
            if (!there.isZero()) {
                portions.add(new Portion(bag, there, there.count(), true));
            }
        }
        boolean uncounted = portions.stream().anyMatch(p -> p.there().uncounted() > 0);
        if (!uncounted) {
            long own = portions.stream().mapToLong(Portion::wanted).sum();
            long missing = needed(drill).orElse(0L) - laid(drill) - own;
            addOthers(portions, drill, Math.min(missing, freeBeside(drill, own)));
        }
        return portions;
    }

    /** What the legend asks for over all lines of a drill; empty when any line is silent. */
    Optional<Long> needed(Drill drill) {
        List<Optional<Long>> needs = Legend.of(view, piece).lines().stream()
                .filter(line -> line.drill().equals(drill))
                .map(LegendLine::needed)
                .toList();
        return needs.stream().allMatch(Optional::isPresent)
                ? Optional.of(needs.stream().mapToLong(Optional::get).sum())
                : Optional.empty();
    }

    private long laid(Drill drill) {
        return view.balance(new Spot.OnCanvas(piece), drill).count();
    }

    /** What the house holds beside the kit's own, set aside for nobody else and not kept for repairs. */
    private long freeBeside(Drill drill, long own) {
        long mine = view.find(Reservation.TYPE, Reservation.idForPiece(piece, drill))
                .map(r -> r.value().count())
                .orElse(0L);
        long kept = DrillPlaces.inRepairPackets(view, drill);
        return view.inTheHouse(drill) - Math.max(0, view.reserved(drill) - mine) - own - kept;
    }

    private void addOthers(List<Portion> portions, Drill drill, long missing) {
        long left = missing;
        List<Spot> bags = view.whereabouts(drill).keySet().stream()
                .filter(spot -> spot instanceof Spot.InBag && !kitBags().contains(spot))
                .filter(spot -> !places.isKeptForOthers(spot))
                .sorted(Comparator.comparing(Spot::toString))
                .toList();
        for (Spot bag : bags) {
            Balance there = view.balance(bag, drill);
            long taken = Math.min(left, there.count());
            if (taken > 0) {
                portions.add(new Portion(bag, there, taken, false));
                left -= taken;
            }
        }
    }
}
