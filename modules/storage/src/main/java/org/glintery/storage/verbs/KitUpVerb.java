package org.glintery.storage.verbs;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.stash.Piece;
import org.glintery.api.storage.Holder;
import org.glintery.api.storage.SpotNames;
import org.glintery.api.storage.Storage.KitUpPlan;
import org.glintery.api.time.About;
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
    public String summary() {
        return "Kit a piece up: its symbols in order into the pockets of a holder";
    }

    @Override
    public String feature() {
        return "storage";
    }

    @Override
    public List<Param> params() {
        return List.of(
                Param.positional("piece", "PIECE", "its title or id"),
                Param.positional("holder", "HOLDER", "the name or id of the holder it goes into"),
                Param.option("on", "DATE", "when"),
                Param.flag("plan", "only show what would be done"));
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
        if (call.flag("plan")) {
            ((Result.Ok<KitUpPlan>) planned).warnings().forEach(call::say);
            return answer(call, piece, holder, plan, false);
        }
        Result<ChangeSet> change = planned.then(p -> Result.ok(p.change()));
        return VerbSteps.apply(call, change, () -> answer(call, piece, holder, plan, true));
    }

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
        TextTable table = new TextTable("Symbol", "Drill", "Where");
        seats.forEach(seat -> table.row(
                seat.symbol(), seat.drill().card() + " " + seat.drill().code(), seat.words()));
        String text = (done ? "Kitted up " : "Would kit up ") + title + " in " + name + ": " + plan.pockets()
                + (plan.pockets() == 1 ? " pocket, " : " pockets, ") + plan.bags()
                + (plan.bags() == 1 ? " bag." : " bags.");
        return VerbResult.said(
                new KittedUp(piece.id(), title, holder.id(), name, done, plan.pockets(), plan.bags(), seats),
                text + "\n" + table);
    }
}
