package org.glintery.storage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.ColourCard;
import org.glintery.api.storage.KitUp;
import org.glintery.api.storage.SpotNames;
import org.glintery.api.storage.Storage.Whereabouts;
import org.glintery.api.workshop.Derived;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/** Finds the bags and pockets that hold a drill, by its code, its name or the symbol it stands for. Any thread. */
final class DrillWhereabouts {
    private static final Derived<Map<Drill, String>> SEARCHABLE = DrillWhereabouts::searchable;

    private final View view;

    DrillWhereabouts(View view) {
        this.view = view;
    }

    List<Whereabouts> find(String text) {
        String wanted = text.strip().toLowerCase(Locale.ROOT);
        if (wanted.isEmpty()) {
            return List.of();
        }
        List<Whereabouts> found = new ArrayList<>();
        Map<Place, Set<String>> symbols = symbols();
        for (Map.Entry<Drill, String> one : drills().entrySet()) {
            boolean named = one.getValue().contains(wanted);
            view.whereabouts(one.getKey()).forEach((spot, balance) -> {
                if (spot.inTheHouse() && (named || holdsSymbol(symbols, new Place(spot, one.getKey()), wanted))) {
                    found.add(whereabouts(one.getKey(), spot, balance, symbols));
                }
            });
        }
        found.sort(Comparator.comparingLong((Whereabouts w) -> -w.balance().count())
                .thenComparing(Whereabouts::words));
        return found;
    }

    @Messages({
        "# {0} - place",
        "# {1} - amount",
        "DrillWhereabouts.there={0}: {1}",
        "# {0} - place",
        "# {1} - symbols",
        "# {2} - amount",
        "# {3} - how many symbols",
        "DrillWhereabouts.seated={0}, {3,choice,1#symbol|1<symbols} {1}: {2}"
    })
    private Whereabouts whereabouts(Drill drill, Spot spot, Balance balance, Map<Place, Set<String>> symbols) {
        Set<String> here = symbols.getOrDefault(new Place(spot, drill), Set.of());
        String place = SpotNames.words(view, spot);
        String words = here.isEmpty()
                ? Bundle.DrillWhereabouts_there(place, balance.words())
                : Bundle.DrillWhereabouts_seated(place, String.join(", ", here), balance.words(), here.size());
        return new Whereabouts(drill, spot, balance, words);
    }

    private static boolean holdsSymbol(Map<Place, Set<String>> symbols, Place place, String wanted) {
        return symbols.getOrDefault(place, Set.of()).stream().anyMatch(s -> s.equalsIgnoreCase(wanted));
    }

    /** Every drill in the house with the words it is found by. */
    private Map<Drill, String> drills() {
        return view.derived(SEARCHABLE);
    }

    private static Map<Drill, String> searchable(View view) {
        Map<Drill, String> words = new HashMap<>();
        for (Spot spot : view.spots()) {
            if (spot.inTheHouse()) {
                view.contents(spot).keySet().forEach(drill -> words.computeIfAbsent(drill, d -> words(view, d)));
            }
        }
        return words;
    }

    private static String words(View view, Drill drill) {
        String name = ColourCard.entry(view, drill.card(), drill.code())
                .flatMap(entry -> entry.name())
                .orElse("");
        return (drill.card() + " " + drill.code() + " " + name).toLowerCase(Locale.ROOT);
    }

    private Map<Place, Set<String>> symbols() {
        Map<Place, Set<String>> symbols = new HashMap<>();
        for (Stored<KitUp> kitUp : view.all(KitUp.TYPE)) {
            for (KitUp.Seat seat : kitUp.value().seats()) {
                symbols.computeIfAbsent(new Place(seat.spot(), seat.drill()), p -> new LinkedHashSet<>())
                        .add(seat.symbol());
            }
        }
        return symbols;
    }

    private record Place(Spot spot, Drill drill) {}
}
