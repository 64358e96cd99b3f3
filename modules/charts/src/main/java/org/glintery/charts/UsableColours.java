package org.glintery.charts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.glintery.api.Result;
import org.glintery.api.charts.ChartRequest;
import org.glintery.api.ledger.Balance;
import org.glintery.api.stash.CardEntry;
import org.glintery.colour.Srgb;
import org.openide.util.NbBundle.Messages;

/** Which colours of the card a request may use. */
@Messages({
    "UsableColours.noneLeft=No colour of the card can be used: none is known, or all are left out. Give a card with colours.",
    "# {0} - code",
    "UsableColours.pinnedUnknown=''{0}'' is to be used in any case, but the card has no colour for it. Nothing was made.",
    "# {0} - code",
    "UsableColours.pinnedBanned=''{0}'' is both to be used in any case and left out. Nothing was made; say which.",
    "# {0} - how many are pinned",
    "# {1} - how many colours",
    "UsableColours.tooManyPinned={0} colours are to be used in any case, but only {1} in all. Nothing was made.",
    "# {0} - how many",
    "# {1} - the same in figures",
    "UsableColours.unknown={0,choice,1#One code of the card has no known colour and was|1<{1} codes of the card have no known "
            + "colour and were} left out."
})
final class UsableColours {

    private UsableColours() {}

    /** In the order of the card. */
    static Result<List<CardColour>> of(ChartRequest request) {
        Set<String> pinned = request.pinned();
        Optional<String> contrary =
                pinned.stream().filter(request.banned()::contains).findFirst();
        if (contrary.isPresent()) {
            return Result.refused("pinned-and-banned", Bundle.UsableColours_pinnedBanned(contrary.get()));
        }
        if (pinned.size() > request.colours()) {
            return Result.refused(
                    "too-many-pinned",
                    Bundle.UsableColours_tooManyPinned(
                            Balance.grouped(pinned.size()), Balance.grouped(request.colours())));
        }
        List<CardColour> usable = new ArrayList<>();
        int unknown = 0;
        for (var entry : request.card().entries().entrySet()) {
            Optional<Srgb> colour = colour(entry.getValue());
            unknown += colour.isEmpty() ? 1 : 0;
            if (colour.isPresent() && !request.banned().contains(entry.getKey())) {
                usable.add(new CardColour(entry.getKey(), colour.get()));
            }
        }
        Optional<String> missing = pinned.stream()
                .filter(code -> usable.stream().noneMatch(one -> one.code().equals(code)))
                .findFirst();
        if (missing.isPresent()) {
            return Result.refused("pinned-unknown", Bundle.UsableColours_pinnedUnknown(missing.get()));
        }
        if (usable.isEmpty()) {
            return Result.refused("no-colours", Bundle.UsableColours_noneLeft());
        }
        return Result.ok(
                usable,
                unknown == 0 ? List.of() : List.of(Bundle.UsableColours_unknown(unknown, Balance.grouped(unknown))));
    }

    private static Optional<Srgb> colour(CardEntry entry) {
        return entry.hex().flatMap(Srgb::parse);
    }
}
