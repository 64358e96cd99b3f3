package org.glintery.stash.verbs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.glintery.api.Result;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.storage.SpotNames;
import org.glintery.api.time.About;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.verb.VerbSteps;
import org.glintery.api.workshop.ChangeSet;
import org.openide.util.lookup.ServiceProvider;

/** {@code drills stocktake}: says how many of a drill really lie in a spot. */
@ServiceProvider(service = Verb.class)
public final class DrillsStocktakeVerb implements Verb {

    /** @param before what was booked there */
    public record Counted(DrillAnswer drill, String spot, Balance before, Balance now) {}

    @Override
    public String name() {
        return "drills stocktake";
    }

    @Override
    public String summary() {
        return "Say how many of a drill really are in a bag, a pocket or on a canvas";
    }

    @Override
    public String feature() {
        return "stash";
    }

    @Override
    public List<Param> params() {
        List<Param> params = new ArrayList<>(List.of(
                Param.positional("code", "CODE", "the drill's code or own name"),
                Param.required("spot", "SPOT", "bag:NAME, pocket:HOLDER/NAME or canvas:PIECE"),
                Param.required("count", "N", "how many there are, 0 for none"),
                Param.option("give-or-take", "N", "how unsure the count is"),
                Param.option("on", "DATE", "when it was counted")));
        params.addAll(DrillOptions.PARAMS);
        return params;
    }

    @Override
    public Class<? extends Record> answers() {
        return Counted.class;
    }

    @Override
    public VerbResult run(VerbCall call) {
        return VerbEnd.of(SpotNames.resolve(call.workshop().view(), call.need("spot"))
                .then(spot -> DrillOptions.drill(call, call.need("code"), Optional.of(spot.spot()))
                        .then(drill -> WordOption.whole(call, "count", 0, Amount.MOST)
                                .then(count -> WordOption.whole(call, "give-or-take", 0, Amount.MOST)
                                        .then(spread -> DateOption.of(call, "on")
                                                .then(on -> Result.ok(count(
                                                        call,
                                                        drill,
                                                        spot,
                                                        amount(count.orElseThrow(), spread.orElse(0L)),
                                                        on))))))));
    }

    private static VerbResult count(
            VerbCall call, Drill drill, SpotNames.Resolved spot, Amount amount, Optional<About> on) {
        Balance before = call.workshop().view().balance(spot.spot(), drill);
        Result<ChangeSet> change =
                StashOfCall.of(call).stocktake(call.workshop().view(), spot.spot(), drill, amount, on, spot.toMake());
        return VerbSteps.apply(call, change, () -> {
            var view = call.workshop().view();
            Balance now = view.balance(spot.spot(), drill);
            String text = "There are " + now.words() + " of " + drill.words() + " in "
                    + SpotNames.words(view, spot.spot()) + "; " + before.words() + " were booked.";
            return VerbResult.said(
                    new Counted(DrillAnswer.of(drill), SpotNames.written(view, spot.spot()), before, now), text);
        });
    }

    private static Amount amount(long count, long spread) {
        return spread == 0 ? Amount.counted(count) : Amount.rough(count, spread);
    }
}
