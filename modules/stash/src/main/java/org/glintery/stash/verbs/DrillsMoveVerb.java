package org.glintery.stash.verbs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.glintery.api.Result;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.stash.MoveRequest;
import org.glintery.api.storage.SpotNames;
import org.glintery.api.time.About;
import org.glintery.api.verb.DrillAnswer;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.verb.VerbSteps;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Operation;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code drills move}: so many drills from one spot to another. */
@ServiceProvider(service = Verb.class)
public final class DrillsMoveVerb implements Verb {

    /** What lies in both spots afterwards. */
    public record Moved(DrillAnswer drill, String from, String to, Balance fromNow, Balance toNow) {}

    @Override
    public String name() {
        return "drills move";
    }

    @Override
    @Messages("DrillsMoveVerb.summary=Move drills from one bag, pocket, canvas or boundary to another")
    public String summary() {
        return Bundle.DrillsMoveVerb_summary();
    }

    @Override
    public String feature() {
        return "stash";
    }

    @Override
    @Messages({
        "DrillsMoveVerb.code=the drill's code or own name",
        "DrillsMoveVerb.from=supplier, found, bag:NAME, pocket:HOLDER/NAME, canvas:PIECE ...",
        "DrillsMoveVerb.to=a spot; a bag is made when it is first named",
        "DrillsMoveVerb.count=how many; left out for drills nobody has counted yet",
        "DrillsMoveVerb.giveOrTake=how unsure the count is",
        "DrillsMoveVerb.on=when, such as 2025-03-31 or 'about October'",
        "DrillsMoveVerb.lot=the batch they are of, where lots differ to the eye",
        "DrillsMoveVerb.reason=why"
    })
    public List<Param> params() {
        List<Param> params = new ArrayList<>(List.of(
                Param.positional("code", "CODE", Bundle.DrillsMoveVerb_code()),
                Param.required("from", "SPOT", Bundle.DrillsMoveVerb_from()),
                Param.required("to", "SPOT", Bundle.DrillsMoveVerb_to()),
                Param.option("count", "N", Bundle.DrillsMoveVerb_count()),
                Param.option("give-or-take", "N", Bundle.DrillsMoveVerb_giveOrTake()),
                Param.option("lot", "NAME", Bundle.DrillsMoveVerb_lot()),
                Param.option("reason", "TEXT", Bundle.DrillsMoveVerb_reason()),
                Param.option("on", "DATE", Bundle.DrillsMoveVerb_on())));
        params.addAll(DrillOptions.PARAMS);
        return params;
    }

    @Override
    public Class<? extends Record> answers() {
        return Moved.class;
    }

    @Override
    public VerbResult run(VerbCall call) {
        var view = call.workshop().view();
        return VerbEnd.of(SpotNames.resolve(view, call.need("from"))
                .then(from -> SpotNames.resolve(view, call.need("to"))
                        .then(to -> DrillOptions.drill(call, call.need("code"), Optional.of(from.spot()))
                                .then(drill -> amount(call)
                                        .then(amount -> DateOption.of(call, "on")
                                                .then(on -> Result.ok(move(call, drill, from, to, amount, on))))))));
    }

    @Messages({
        "# {0} - amount",
        "# {1} - drill",
        "# {2} - where from",
        "# {3} - where to",
        "DrillsMoveVerb.moved=Moved {0} of {1} from {2} to {3}.",
        "# {0} - drill",
        "# {1} - where from",
        "# {2} - where to",
        "DrillsMoveVerb.movedUncounted=Moved some of {0} from {1} to {2}, not counted yet."
    })
    private static VerbResult move(
            VerbCall call,
            Drill drill,
            SpotNames.Resolved from,
            SpotNames.Resolved to,
            Amount amount,
            Optional<About> on) {
        MoveRequest request = new MoveRequest(
                drill,
                call.value("lot").map(String::strip).filter(lot -> !lot.isEmpty()),
                from.spot(),
                to.spot(),
                amount,
                call.value("reason").orElse(""),
                on,
                false);
        List<Operation> making = new ArrayList<>(from.toMake());
        making.addAll(to.toMake());
        Result<ChangeSet> change = StashOfCall.of(call).move(call.workshop().view(), request, making);
        return VerbSteps.apply(call, change, () -> {
            var view = call.workshop().view();
            Moved moved = new Moved(
                    DrillAnswer.of(drill),
                    SpotNames.written(view, from.spot()),
                    SpotNames.written(view, to.spot()),
                    view.balance(from.spot(), drill),
                    view.balance(to.spot(), drill));
            String fromWords = SpotNames.words(view, from.spot());
            String toWords = SpotNames.words(view, to.spot());
            return VerbResult.said(
                    moved,
                    amount.known()
                            ? Bundle.DrillsMoveVerb_moved(amount.words(), drill.words(), fromWords, toWords)
                            : Bundle.DrillsMoveVerb_movedUncounted(drill.words(), fromWords, toWords));
        });
    }

    private static Result<Amount> amount(VerbCall call) {
        return WordOption.whole(call, "count", 1, Amount.MOST)
                .then(count -> WordOption.whole(call, "give-or-take", 0, Amount.MOST)
                        .then(spread -> {
                            if (count.isEmpty()) {
                                return Result.ok(Amount.unknown());
                            }
                            return Result.ok(
                                    spread.filter(s -> s > 0).isPresent()
                                            ? Amount.rough(count.get(), spread.get())
                                            : Amount.counted(count.get()));
                        }));
    }
}
