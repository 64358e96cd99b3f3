package org.glintery.storage.ui;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.CardEntry;
import org.glintery.api.stash.ColourCard;
import org.glintery.api.stash.Piece;
import org.glintery.api.storage.Bag;
import org.glintery.api.storage.Holder;
import org.glintery.api.storage.KitUp;
import org.glintery.api.storage.Pocket;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.glintery.storage.FreeHolders;
import org.glintery.workbench.parts.DrillLook;

/**
 * What the Cabinet shows. Immutable; made without Swing.
 *
 * @param bags those in which anything lies, by name
 */
record CabinetSheet(List<HolderDrawing> holders, List<BagLine> bags) {

    /**
     * A holder as it is drawn.
     *
     * @param pieces the titles of those that sit in it
     * @param toClear whether one of them is made and waits to be kitted down
     * @param empty whether nothing is in it; it is free then, unless it is lent
     */
    record HolderDrawing(
            UUID id,
            String name,
            int rows,
            int columns,
            List<PocketDrawing> pockets,
            List<String> pieces,
            boolean toClear,
            boolean empty,
            Optional<String> lentTo) {}

    /**
     * A pocket as it is drawn.
     *
     * @param mixed whether several kinds may lie in it
     * @param level how full, 0 to 1; a guess where capacity or amount is not known
     * @param guessed whether the level is such a guess
     * @param symbols that have their place here
     */
    record PocketDrawing(
            Spot spot,
            String name,
            Optional<Long> capacity,
            boolean mixed,
            double level,
            boolean guessed,
            List<Content> contents,
            List<String> symbols) {}

    /** A drill that lies somewhere. */
    record Content(Drill drill, DrillLook look, Optional<String> name, Balance balance) {}

    /** @param repairPacket whether it is kept with a piece for repairs */
    record BagLine(Spot spot, String name, boolean repairPacket, List<Content> contents) {}

    private static final double GUESSED_LEVEL = 0.55;
    private static final double LEAST_LEVEL = 0.08;

    CabinetSheet {
        holders = List.copyOf(holders);
        bags = List.copyOf(bags);
    }

    static CabinetSheet of(View view) {
        List<Stored<KitUp>> kitUps = view.all(KitUp.TYPE);
        Map<Spot, Set<String>> symbols = new HashMap<>();
        kitUps.forEach(kitUp -> kitUp.value()
                .seats()
                .forEach(seat -> symbols.computeIfAbsent(seat.spot(), s -> new LinkedHashSet<>())
                        .add(seat.symbol())));
        List<HolderDrawing> holders = new ArrayList<>();
        FreeHolders free = new FreeHolders(view);
        view.all(Holder.TYPE).forEach(holder -> holders.add(holder(view, free, holder, kitUps, symbols)));
        List<BagLine> bags = new ArrayList<>();
        view.all(Bag.TYPE).forEach(bag -> {
            Spot spot = new Spot.InBag(bag.id());
            List<Content> contents = contents(view, spot);
            if (!contents.isEmpty()) {
                bags.add(new BagLine(
                        spot, bag.value().name(), bag.value().repairFor().isPresent(), contents));
            }
        });
        bags.sort((a, b) -> a.name().compareToIgnoreCase(b.name()));
        return new CabinetSheet(holders, bags);
    }

    private static HolderDrawing holder(
            View view,
            FreeHolders free,
            Stored<Holder> stored,
            List<Stored<KitUp>> kitUps,
            Map<Spot, Set<String>> symbols) {
        Holder holder = stored.value();
        List<PocketDrawing> pockets = holder.pockets().stream()
                .map(pocket -> pocket(view, new Spot.InPocket(stored.id(), pocket.id()), pocket, symbols))
                .toList();
        List<Stored<KitUp>> here = kitUps.stream()
                .filter(kitUp -> kitUp.value().holder().equals(stored.id()))
                .toList();
        List<String> pieces = here.stream()
                .flatMap(kitUp -> view.find(Piece.TYPE, kitUp.id()).stream())
                .map(piece -> piece.value().title())
                .toList();
        return new HolderDrawing(
                stored.id(),
                holder.name(),
                holder.rows(),
                holder.columns(),
                pockets,
                pieces,
                here.stream().anyMatch(kitUp -> kitUp.value().toClear()),
                free.isEmpty(stored),
                holder.lentTo());
    }

    private static PocketDrawing pocket(View view, Spot spot, Pocket pocket, Map<Spot, Set<String>> symbols) {
        List<Content> contents = contents(view, spot);
        long count = contents.stream()
                .mapToLong(content -> content.balance().count())
                .sum();
        boolean uncounted =
                contents.stream().anyMatch(content -> content.balance().uncounted() > 0);
        boolean guessed = !contents.isEmpty() && (uncounted || pocket.capacity().isEmpty());
        double level = guessed
                ? GUESSED_LEVEL
                : pocket.capacity().map(most -> (double) count / most).orElse(0.0);
        double shown = contents.isEmpty() ? 0 : Math.max(LEAST_LEVEL, Math.min(1, level));
        return new PocketDrawing(
                spot,
                pocket.name(),
                pocket.capacity(),
                pocket.mixed(),
                shown,
                guessed,
                contents,
                List.copyOf(symbols.getOrDefault(spot, Set.of())));
    }

    private static List<Content> contents(View view, Spot spot) {
        List<Content> contents = new ArrayList<>();
        view.contents(spot).forEach((drill, balance) -> {
            CardEntry entry = ColourCard.entry(view, drill.card(), drill.code()).orElse(CardEntry.UNKNOWN);
            contents.add(new Content(drill, DrillLook.of(drill, entry), entry.name(), balance));
        });
        contents.sort((a, b) -> Long.compare(b.balance().count(), a.balance().count()));
        return List.copyOf(contents);
    }
}
