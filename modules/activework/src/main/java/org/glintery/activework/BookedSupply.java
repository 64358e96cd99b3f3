package org.glintery.activework;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.glintery.api.Refusal;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.storage.DrillPlaces;
import org.glintery.api.workshop.Settings;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/**
 * Whether the drills that a script says were laid are booked in the piece's pockets and bags. A person at the screen is
 * believed and what is missing is found; a script is not. Pure; any thread.
 */
public final class BookedSupply {

    /** What is asked of one drill, over all its symbols. */
    private record Asked(Set<String> symbols, long count) {

        Asked and(String symbol, long more) {
            Set<String> all = new LinkedHashSet<>(symbols);
            all.add(symbol);
            return new Asked(all, count + more);
        }
    }

    private BookedSupply() {}

    /** The refusal where too few are booked; places with uncounted drills are never too empty. */
    public static Optional<Refusal> shortage(View view, UUID piece, Map<String, Long> bySymbol) {
        if (!Settings.keepsDrills(view)) {
            return Optional.empty();
        }
        Map<Drill, Asked> asked = new LinkedHashMap<>();
        for (LegendLine line : Legend.of(view, piece).lines()) {
            long count = bySymbol.getOrDefault(line.symbol(), 0L);
            Asked before = asked.getOrDefault(line.drill(), new Asked(Set.of(), 0));
            if (count > 0 && !before.symbols().contains(line.symbol())) {
                asked.put(line.drill(), before.and(line.symbol(), count));
            }
        }
        DrillPlaces places = new DrillPlaces(view, piece);
        return asked.entrySet().stream()
                .flatMap(one -> shortage(view, places, one.getKey(), one.getValue()).stream())
                .findFirst();
    }

    @Messages({
        "# {0} - symbols",
        "# {1} - how many are booked",
        "# {2} - the same in figures",
        "# {3} - asked for",
        "BookedSupply.short=Of {0}, {1,choice,0#0 are|1#1 is|1<{2} are} booked in the pockets and bags of the piece, fewer than {3}. Nothing was changed. Count them first with a stocktake."
    })
    private static Optional<Refusal> shortage(View view, DrillPlaces places, Drill drill, Asked asked) {
        long booked = 0;
        Set<Spot> spots = new LinkedHashSet<>();
        asked.symbols().forEach(symbol -> spots.addAll(places.of(symbol, drill)));
        for (Spot spot : spots) {
            Balance there = view.balance(spot, drill);
            if (there.uncounted() > 0) {
                return Optional.empty();
            }
            booked += there.count();
        }
        return booked >= asked.count()
                ? Optional.empty()
                : Optional.of(new Refusal(
                        "not-enough",
                        Bundle.BookedSupply_short(
                                String.join(", ", asked.symbols()),
                                booked,
                                Balance.grouped(booked),
                                Balance.grouped(asked.count()))));
    }
}
