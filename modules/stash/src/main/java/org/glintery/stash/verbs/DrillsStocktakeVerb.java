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
import org.glintery.api.verb.DrillAnswer;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.verb.VerbSteps;
import org.glintery.api.workshop.ChangeSet;
import org.openide.util.NbBundle.Messages;
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
    @Messages("DrillsStocktakeVerb.summary=Say how many of a drill really are in a bag, a pocket or on a canvas")
    public String summary() {
        return Bundle.DrillsStocktakeVerb_summary();
    }

    @Override
    public String feature() {
        return "stash";
    }

    @Override
    @Messages({
        "DrillsStocktakeVerb.code=the drill's code or own name",
        "DrillsStocktakeVerb.spot=bag:NAME, pocket:HOLDER/NAME or canvas:PIECE",
        "DrillsStocktakeVerb.count=how many there are, 0 for none",
        "DrillsStocktakeVerb.giveOrTake=how unsure the count is",
        "DrillsStocktakeVerb.on=when it was counted"
    })
    public List<Param> params() {
        List<Param> params = new ArrayList<>(List.of(
                Param.positional("code", "CODE", Bundle.DrillsStocktakeVerb_code()),
                Param.required("spot", "SPOT", Bundle.DrillsStocktakeVerb_spot()),
                Param.required("count", "N", Bundle.DrillsStocktakeVerb_count()),
                Param.option("give-or-take", "N", Bundle.DrillsStocktakeVerb_giveOrTake()),
                Param.option("on", "DATE", Bundle.DrillsStocktakeVerb_on())));
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
            return VerbResult.said(
                    new Counted(DrillAnswer.of(drill), SpotNames.written(view, spot.spot()), before, now),
                    words(now, drill, SpotNames.words(view, spot.spot()), before));
        });
    }

    @Messages({
        "# {0} - there now",
        "# {1} - there now in words",
        "# {2} - drill",
        "# {3} - where",
        "# {4} - booked before",
        "# {5} - booked before in words",
        "DrillsStocktakeVerb.counted={0,choice,0#There are|1#There is|1<There are} {1} of {2} in {3}; "
                + "{4,choice,0#{5} were|1#{5} was|1<{5} were} booked.",
        "# {0} - there now",
        "# {1} - there now in words",
        "# {2} - drill",
        "# {3} - where",
        "DrillsStocktakeVerb.countedFirst={0,choice,0#There are|1#There is|1<There are} {1} of {2} in {3}; "
                + "nobody had counted them before."
    })
    private static String words(Balance now, Drill drill, String where, Balance before) {
        return before.count() == 0 && before.uncounted() > 0
                ? Bundle.DrillsStocktakeVerb_countedFirst(now.count(), now.words(), drill.words(), where)
                : Bundle.DrillsStocktakeVerb_counted(
                        now.count(), now.words(), drill.words(), where, before.count(), before.words());
    }

    private static Amount amount(long count, long spread) {
        return spread == 0 ? Amount.counted(count) : Amount.rough(count, spread);
    }
}
