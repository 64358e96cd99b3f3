package org.glintery.stash;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.MoveRequest;
import org.glintery.api.storage.Pocket;
import org.glintery.api.storage.SpotNames;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/** What to say when drills go into a pocket that is too small, or to others of another kind. Never a refusal. */
final class PocketWarnings {

    private PocketWarnings() {}

    @Messages({
        "# {0} - pocket",
        "# {1} - capacity",
        "# {2} - capacity in words",
        "# {3} - drills in it",
        "PocketWarnings.full={0} takes about {1,choice,1#1 drill|1<{2} drills} and now holds {3}.",
        "# {0} - pocket",
        "# {1} - code",
        "PocketWarnings.mixed={0} holds {1} too and is not marked mixed."
    })
    static List<String> after(View view, MoveRequest request) {
        if (!(request.to() instanceof Spot.InPocket spot)) {
            return List.of();
        }
        Optional<Pocket> pocket = SpotCheck.pocket(view, spot);
        if (pocket.isEmpty()) {
            return List.of();
        }
        Map<Drill, Balance> there = view.contents(spot);
        List<String> warnings = new ArrayList<>();
        String name = SpotNames.words(view, spot);
        long before = there.values().stream().mapToLong(Balance::count).sum();
        long after = before + request.amount().count().orElse(0L);
        pocket.get()
                .capacity()
                .filter(capacity -> after > capacity)
                .ifPresent(capacity -> warnings.add(
                        Bundle.PocketWarnings_full(name, capacity, Balance.grouped(capacity), Balance.grouped(after))));
        if (!pocket.get().mixed()) {
            there.keySet().stream()
                    .filter(drill -> !drill.equals(request.drill()))
                    .findFirst()
                    .ifPresent(other -> warnings.add(Bundle.PocketWarnings_mixed(name, other.code())));
        }
        return warnings;
    }
}
