package org.glintery.storage.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.glintery.api.Result;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Stash;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.View;
import org.glintery.workbench.parts.TypedAmount;
import org.openide.util.NbBundle.Messages;

/**
 * What was counted in one place, as it is typed. Made without Swing; immutable.
 *
 * @param lines one for each drill that is booked there
 */
record SpotCount(Spot spot, List<Line> lines) {
    private static final String NOTHING = "nothing-to-change";

    /** @param typed such as "1 240" or "about 200"; blank where nothing was counted */
    record Line(Drill drill, String typed) {}

    SpotCount {
        lines = List.copyOf(lines);
    }

    /** One change for all that was counted, or what is not understood. */
    @Messages("SpotCount.none=Nothing was counted yet. Type how many there are, or leave it.")
    Result<ChangeSet> change(View view, Stash stash, About on) {
        List<Result<ChangeSet>> counts = new ArrayList<>();
        for (Line line : lines) {
            Result<Amount> amount = TypedAmount.read(line.typed());
            if (amount instanceof Result.Refused<Amount> no) {
                return Result.refused(no.refusal());
            }
            if (amount.orThrow().known()) {
                counts.add(stash.stocktake(view, spot, line.drill(), amount.orThrow(), Optional.of(on)));
            }
        }
        return counts.stream()
                .reduce((one, other) -> one.then(a -> other.then(b -> Result.ok(a.join(b)))))
                .orElseGet(() -> Result.refused(NOTHING, Bundle.SpotCount_none()));
    }
}
