package org.glintery.stash.posting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.glintery.api.Result;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.CardEntry;
import org.glintery.api.stash.ColourCard;
import org.glintery.api.storage.SpotNames;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Operation;
import org.glintery.api.workshop.View;
import org.glintery.stash.CardTitle;

/**
 * Spots and codes that were looked up before. What a change is about to make counts only once {@link #keep} says that
 * it was made. Correct as long as nobody else changes the workshop. One thread.
 */
final class KnownPlaces {

    private final Map<String, Spot> spots = new HashMap<>();
    private final Map<String, Set<String>> codes = new HashMap<>();
    private final Map<String, Spot> newSpots = new LinkedHashMap<>();
    private final List<Operation> toMake = new ArrayList<>();
    private final Map<String, Set<String>> newCodes = new LinkedHashMap<>();

    /** The spot that is written; a bag named for the first time is made in this change. */
    Result<Spot> spot(View view, String written) {
        Spot known = spots.getOrDefault(written, newSpots.get(written));
        if (known != null) {
            return Result.ok(known);
        }
        return SpotNames.resolve(view, written).then(resolved -> {
            // bag:b1 and bag:B1 in one batch are one new bag: made once
            Spot spot = newSpots.getOrDefault(key(written), resolved.spot());
            if (!newSpots.containsValue(spot)) {
                toMake.addAll(resolved.toMake());
            }
            newSpots.put(key(written), spot);
            newSpots.put(written, spot);
            return Result.ok(spot);
        });
    }

    void use(View view, Drill drill) {
        Set<String> known = codes.computeIfAbsent(drill.card(), card -> codesOf(view, card));
        if (!known.contains(drill.code())) {
            newCodes.computeIfAbsent(drill.card(), card -> new HashSet<>()).add(drill.code());
        }
    }

    /** Adds the bags and codes that are new to the change. */
    void makeIn(ChangeSet.Builder change, View view) {
        change.addAll(toMake);
        newCodes.forEach((card, added) -> {
            ColourCard old = view.find(ColourCard.TYPE, ColourCard.idOf(card))
                    .map(stored -> stored.value())
                    .orElseGet(() -> new ColourCard(card, CardTitle.of(card), Map.of(), List.of()));
            Map<String, CardEntry> entries = new LinkedHashMap<>(old.entries());
            added.stream().sorted().forEach(code -> entries.putIfAbsent(code, CardEntry.UNKNOWN));
            change.put(
                    ColourCard.TYPE,
                    ColourCard.idOf(card),
                    new ColourCard(old.name(), old.title(), entries, old.same()));
        });
    }

    /** The change was made: what was new is known from now on. */
    void keep() {
        spots.putAll(newSpots);
        newCodes.forEach((card, added) -> codes.get(card).addAll(added));
        forget();
    }

    /** The change was refused: what was new is not there. */
    void forget() {
        newSpots.clear();
        toMake.clear();
        newCodes.clear();
    }

    private static String key(String written) {
        return written.strip().toLowerCase(Locale.ROOT);
    }

    private static Set<String> codesOf(View view, String card) {
        return view.find(ColourCard.TYPE, ColourCard.idOf(card))
                .map(stored ->
                        (Set<String>) new HashSet<>(stored.value().entries().keySet()))
                .orElseGet(HashSet::new);
    }
}
