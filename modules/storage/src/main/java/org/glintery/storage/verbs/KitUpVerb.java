package org.glintery.storage.verbs;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.ledger.Balance;
import org.glintery.api.stash.Piece;
import org.glintery.api.storage.Holder;
import org.glintery.api.storage.SpotNames;
import org.glintery.api.storage.Storage.KitUpPlan;
import org.glintery.api.time.About;
import org.glintery.api.verb.DrillAnswer;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.TextTable;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.verb.VerbSteps;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Operation;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code kitup}: a piece's drills into a holder, symbols in order. */
@ServiceProvider(service = Verb.class)
public final class KitUpVerb implements Verb {

    /** What was done, or would be. @param done false when it was only planned */
    public record KittedUp(
            UUID piece,
            String title,
            UUID holder,
            String holderName,
            boolean done,
            int pockets,
            int bags,
            List<Seat> seats) {}

    /** A symbol's place. */
    public record Seat(String symbol, DrillAnswer drill, String spot, String words) {}

    @Override
    public String name() {
        return "kitup";
    }

    @Override
    @Messages("KitUpVerb.summary=Kit a piece up: its symbols in order into the pockets of a holder")
    public String summary() {
        return Bundle.KitUpVerb_summary();
    }

    @Override
    public String feature() {
        return "storage";
    }

    @Override
    @Messages({
        "KitUpVerb.piece=its title or id",
        "KitUpVerb.holder=the name or id of the holder it goes into",
        "KitUpVerb.on=when",
        "KitUpVerb.preview=only show what would be done"
    })
    public List<Param> params() {
        return List.of(
                Param.positional("piece", "PIECE", Bundle.KitUpVerb_piece()),
                Param.positional("holder", "HOLDER", Bundle.KitUpVerb_holder()),
                Param.option("on", "DATE", Bundle.KitUpVerb_on()),
                Param.flag("preview", Bundle.KitUpVerb_preview()));
    }

    @Override
    public Class<? extends Record> answers() {
        return KittedUp.class;
    }

    @Override
    public VerbResult run(VerbCall call) {
        return VerbSteps.named(
                call,
                Piece.TYPE,
                Piece::title,
                call.need("piece"),
                piece -> VerbSteps.named(
                        call,
                        Holder.TYPE,
                        Holder::name,
                        call.need("holder"),
                        holder -> Asked.date(call, "on", on -> kitUp(call, piece, holder, on))));
    }

    private static VerbResult kitUp(VerbCall call, Stored<Piece> piece, Stored<Holder> holder, Optional<About> on) {
        Result<KitUpPlan> planned =
                StorageOfCall.of(call).planKitUp(call.workshop().view(), piece.id(), holder.id(), on);
        if (planned instanceof Result.Refused<KitUpPlan> no) {
            return VerbResult.refused(no.refusal());
        }
        KitUpPlan plan = ((Result.Ok<KitUpPlan>) planned).value();
        if (call.flag("preview")) {
            ((Result.Ok<KitUpPlan>) planned).warnings().forEach(call::say);
            return answer(call, piece, holder, plan, false);
        }
        Result<ChangeSet> change = planned.then(p -> Result.ok(p.change()));
        return VerbSteps.apply(call, change, () -> answer(call, piece, holder, plan, true));
    }

    @Messages({
        "KitUpVerb.symbol=Symbol",
        "KitUpVerb.drill=Drill",
        "KitUpVerb.where=Where",
        "# {0} - title",
        "# {1} - holder",
        "# {2} - pockets",
        "# {3} - pockets in words",
        "# {4} - bags",
        "# {5} - bags in words",
        "KitUpVerb.done=Kitted up {0} in {1}: {2,choice,0#0 pockets|1#1 pocket|1<{3} pockets}, {4,choice,0#0 bags|1#1 bag|1<{5} bags}.",
        "# {0} - title",
        "# {1} - holder",
        "# {2} - pockets",
        "# {3} - pockets in words",
        "# {4} - bags",
        "# {5} - bags in words",
        "KitUpVerb.planned=Would kit up {0} in {1}: {2,choice,0#0 pockets|1#1 pocket|1<{3} pockets}, {4,choice,0#0 bags|1#1 bag|1<{5} bags}."
    })
    private static VerbResult answer(
            VerbCall call, Stored<Piece> piece, Stored<Holder> holder, KitUpPlan plan, boolean done) {
        View view = call.workshop().view();
        List<Operation> made = plan.change().operations();
        List<Seat> seats = plan.seats().stream()
                .map(seat -> new Seat(
                        seat.symbol(),
                        DrillAnswer.of(seat.drill()),
                        SpotNames.written(view, seat.spot(), made),
                        SpotNames.words(view, seat.spot(), made)))
                .toList();
        String title = piece.value().title();
        String name = holder.value().name();
        TextTable table = new TextTable(Bundle.KitUpVerb_symbol(), Bundle.KitUpVerb_drill(), Bundle.KitUpVerb_where());
        seats.forEach(seat -> table.row(
                seat.symbol(), seat.drill().card() + " " + seat.drill().code(), seat.words()));
        String pockets = Balance.grouped(plan.pockets());
        String bags = Balance.grouped(plan.bags());
        String text = done
                ? Bundle.KitUpVerb_done(title, name, plan.pockets(), pockets, plan.bags(), bags)
                : Bundle.KitUpVerb_planned(title, name, plan.pockets(), pockets, plan.bags(), bags);
        return VerbResult.said(
                new KittedUp(piece.id(), title, holder.id(), name, done, plan.pockets(), plan.bags(), seats),
                text + "\n" + table);
    }
}
