package org.glintery.stash;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.CardEntry;
import org.glintery.api.stash.ColourCard;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.Stash.KnownDrill;
import org.glintery.api.storage.DrillPlaces;
import org.glintery.api.workshop.Derived;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;

/** Finds drills by card, code or name. Made once a view; immutable. */
final class DrillSearch {
    private static final Derived<DrillSearch> OF_ALL = DrillSearch::new;

    private final View view;
    private final List<Searchable> all;

    private DrillSearch(View view) {
        this.view = view;
        List<Searchable> found = new ArrayList<>();
        for (Drill drill : inUse(view)) {
            CardEntry entry = ColourCard.entry(view, drill.card(), drill.code()).orElse(CardEntry.UNKNOWN);
            found.add(new Searchable(drill, entry, text(drill, entry)));
        }
        found.sort(Comparator.comparing((Searchable s) -> s.drill().card())
                .thenComparing(s -> s.drill().code(), CodeOrder.NATURAL)
                .thenComparing(s -> s.drill().kindWords()));
        all = List.copyOf(found);
    }

    static DrillSearch of(View view) {
        return view.derived(OF_ALL);
    }

    /** Every word of the text must be in the card, the code or the name. */
    List<KnownDrill> find(String text) {
        List<String> words = List.of(text.strip().toLowerCase(Locale.ROOT).split("\\s+"));
        return all.stream()
                .filter(one -> words.stream().allMatch(one.text()::contains))
                .map(one -> new KnownDrill(
                        one.drill(),
                        one.entry(),
                        DrillPlaces.inTheHouse(view, one.drill()),
                        DrillPlaces.forLaying(view, one.drill()).plus(-view.reserved(one.drill()), 0, 0)))
                .toList();
    }

    private static Set<Drill> inUse(View view) {
        Set<Drill> drills = new LinkedHashSet<>();
        for (Spot spot : view.spots()) {
            drills.addAll(view.contents(spot).keySet());
        }
        for (Stored<Legend> legend : view.all(Legend.TYPE)) {
            legend.value().lines().forEach(line -> drills.add(line.drill()));
        }
        return drills;
    }

    private static String text(Drill drill, CardEntry entry) {
        return (drill.card() + " " + drill.code() + " " + entry.name().orElse("")).toLowerCase(Locale.ROOT);
    }

    private record Searchable(Drill drill, CardEntry entry, String text) {}
}
