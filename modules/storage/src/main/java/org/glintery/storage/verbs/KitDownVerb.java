package org.glintery.storage.verbs;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.ledger.Balance;
import org.glintery.api.stash.Piece;
import org.glintery.api.storage.Holder;
import org.glintery.api.storage.SpotNames;
import org.glintery.api.storage.Storage;
import org.glintery.api.storage.Storage.KitDownPlan;
import org.glintery.api.storage.Storage.LeftoversPlan;
import org.glintery.api.time.About;
import org.glintery.api.verb.DrillAnswer;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.TextTable;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.verb.VerbSteps;
import org.glintery.api.workshop.Applied;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code kitdown}: clears a piece's holder; what is left goes into a repair packet and bags. */
@ServiceProvider(service = Verb.class)
public final class KitDownVerb implements Verb {

    /** Drills of each colour in a repair packet when nothing else is said. */
    private static final long USUAL_REPAIR_DRILLS = 10;

    private static final long MOST_REPAIR_DRILLS = 10_000;

    /** What was done. */
    public record KittedDown(
            UUID piece, String title, Optional<UUID> holder, Optional<String> holderName, List<Step> steps) {}

    /** So many of a drill from one place to another. */
    public record Step(DrillAnswer drill, String from, String to, Balance amount) {}

    @Override
    public String name() {
        return "kitdown";
    }

    @Override
    @Messages(
            "KitDownVerb.summary=Kit a piece down: clear its holder, keep a repair packet, leftovers into one bag a colour")
    public String summary() {
        return Bundle.KitDownVerb_summary();
    }

    @Override
    public String feature() {
        return "storage";
    }

    @Override
    @Messages({
        "KitDownVerb.piece=its title or id",
        "# {0} - usual number",
        "KitDownVerb.repair=drills of each colour for the repair packet; {0} when not said",
        "KitDownVerb.on=when"
    })
    public List<Param> params() {
        return List.of(
                Param.positional("piece", "PIECE", Bundle.KitDownVerb_piece()),
                Param.option("repair", "N", Bundle.KitDownVerb_repair(Balance.grouped(USUAL_REPAIR_DRILLS))),
                Param.option("on", "DATE", Bundle.KitDownVerb_on()));
    }

    @Override
    public Class<? extends Record> answers() {
        return KittedDown.class;
    }

    @Override
    public VerbResult run(VerbCall call) {
        return VerbSteps.named(
                call,
                Piece.TYPE,
                Piece::title,
                call.need("piece"),
                piece -> Asked.whole(
                        call,
                        "repair",
                        0,
                        MOST_REPAIR_DRILLS,
                        repair -> Asked.date(
                                call, "on", on -> kitDown(call, piece, repair.orElse(USUAL_REPAIR_DRILLS), on))));
    }

    /** A piece that is made and sits in no holder has its kit's bag sorted. */
    private static VerbResult kitDown(VerbCall call, Stored<Piece> piece, long repair, Optional<About> on) {
        Storage storage = StorageOfCall.of(call);
        View view = call.workshop().view();
        Result<KitDownPlan> down = storage.planKitDown(view, piece.id(), repair, on);
        boolean inNoHolder = down instanceof Result.Refused<KitDownPlan> no
                && no.refusal().code().equals("not-kitted-up");
        if (!inNoHolder) {
            return done(
                    call,
                    piece,
                    down.then(plan -> Result.ok(new Planned(plan.change(), Optional.of(plan.freed()), plan.steps()))));
        }
        Result<LeftoversPlan> left = storage.planLeftovers(view, piece.id(), repair, on);
        return done(
                call, piece, left.then(plan -> Result.ok(new Planned(plan.change(), Optional.empty(), plan.steps()))));
    }

    /** @param freed the holder that is free again, where the piece sat in one */
    private record Planned(ChangeSet change, Optional<UUID> freed, List<Storage.Step> steps) {}

    private static VerbResult done(VerbCall call, Stored<Piece> piece, Result<Planned> planned) {
        Result<Planned> done = planned.then(plan -> {
            Result<Applied> applied = call.workshop().apply(plan.change());
            return applied.then(a -> Result.ok(plan));
        });
        if (done instanceof Result.Refused<Planned> no) {
            return VerbResult.refused(no.refusal());
        }
        Result.Ok<Planned> ok = (Result.Ok<Planned>) done;
        ok.warnings().forEach(call::say);
        return answer(call.workshop().view(), piece, ok.value());
    }

    @Messages({
        "KitDownVerb.drill=Drill",
        "KitDownVerb.amount=Amount",
        "KitDownVerb.from=From",
        "KitDownVerb.to=To",
        "# {0} - title",
        "KitDownVerb.done=Kitted down {0}.",
        "# {0} - title",
        "# {1} - holder",
        "KitDownVerb.cleared=Kitted down {0}. {1} is cleared.",
        "# {0} - title",
        "KitDownVerb.clearedIts=Kitted down {0}. Its holder is cleared."
    })
    private static VerbResult answer(View view, Stored<Piece> piece, Planned plan) {
        String title = piece.value().title();
        Optional<String> holder = plan.freed()
                .flatMap(id -> view.find(Holder.TYPE, id))
                .map(h -> h.value().name());
        List<Step> steps = plan.steps().stream()
                .map(step -> new Step(
                        DrillAnswer.of(step.drill()),
                        SpotNames.written(view, step.from()),
                        SpotNames.written(view, step.to()),
                        step.amount()))
                .toList();
        TextTable table = new TextTable(
                Bundle.KitDownVerb_drill(),
                Bundle.KitDownVerb_amount(),
                Bundle.KitDownVerb_from(),
                Bundle.KitDownVerb_to());
        plan.steps()
                .forEach(step -> table.row(
                        step.drill().card() + " " + step.drill().code(),
                        step.amount().words(),
                        SpotNames.words(view, step.from()),
                        SpotNames.words(view, step.to())));
        String text = holder.map(name -> Bundle.KitDownVerb_cleared(title, name))
                .orElse(
                        plan.freed().isPresent()
                                ? Bundle.KitDownVerb_clearedIts(title)
                                : Bundle.KitDownVerb_done(title));
        return VerbResult.said(
                new KittedDown(piece.id(), title, plan.freed(), holder, steps),
                table.isEmpty() ? text : text + "\n" + table);
    }
}
