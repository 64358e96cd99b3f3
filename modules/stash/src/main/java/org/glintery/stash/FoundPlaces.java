package org.glintery.stash;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Legend;
import org.glintery.api.storage.SpotNames;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.FoundDrills;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/** Where drills were found that were not booked, for the maker to look at. Pure; any thread. */
public final class FoundPlaces {

    private FoundPlaces() {}

    /** What there is a doubt about, the most drills first. */
    public static List<Stored<FoundDrills>> all(View view) {
        return view.all(FoundDrills.TYPE).stream()
                .filter(found -> isDoubt(view, found.value()))
                .sorted(Comparator.comparingLong(
                                (Stored<FoundDrills> found) -> -found.value().count())
                        .thenComparing(Stored::id))
                .toList();
    }

    /** Where nobody said how many came with a piece, more can't have been laid on it than came. */
    private static boolean isDoubt(View view, FoundDrills found) {
        return !(found.at() instanceof Spot.OnCanvas canvas)
                || Legend.of(view, canvas.piece()).lines().stream()
                        .filter(line -> line.drill().equals(found.drill()))
                        .allMatch(line -> line.supplied().known());
    }

    /** How many were found of a drill at a spot and not looked at yet. */
    public static long at(View view, Spot spot, Drill drill) {
        return FoundDrills.at(view, spot, drill);
    }

    /** The maker has looked: the flag goes, what is booked stays. Refused with {@code gone} when it is gone already. */
    @Messages({
        "FoundPlaces.gone=That was looked at already. Nothing was changed.",
        "# {0} - code",
        "# {1} - place",
        "FoundPlaces.lookedAt=Look at {0} found in {1}"
    })
    public static Result<ChangeSet> lookedAt(View view, UUID flag) {
        Optional<Stored<FoundDrills>> stored = view.find(FoundDrills.TYPE, flag);
        if (stored.isEmpty()) {
            return Result.refused("gone", Bundle.FoundPlaces_gone());
        }
        FoundDrills found = stored.get().value();
        ChangeSet.Builder change =
                ChangeSet.named(Bundle.FoundPlaces_lookedAt(found.drill().code(), SpotNames.words(view, found.at())));
        FoundDrills.add(change, view, found.at(), found.drill(), -found.count());
        return Result.ok(change.build());
    }
}
