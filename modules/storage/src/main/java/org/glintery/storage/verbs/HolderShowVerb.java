package org.glintery.storage.verbs;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.storage.Holder;
import org.glintery.api.storage.KitUp;
import org.glintery.api.storage.Pocket;
import org.glintery.api.verb.DrillAnswer;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.TextTable;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.verb.VerbSteps;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.glintery.storage.FreeHolders;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code holder show}: what lies in each pocket. */
@ServiceProvider(service = Verb.class)
public final class HolderShowVerb implements Verb {

    /** A holder pocket by pocket. */
    public record Shown(HolderLine holder, List<PocketLine> pockets) {}

    /** One pocket. @param symbols of the pieces that sit in it */
    public record PocketLine(
            UUID id,
            String name,
            Optional<Long> capacity,
            boolean mixed,
            List<String> symbols,
            List<Content> contents) {}

    /** A drill in it. */
    public record Content(DrillAnswer drill, Balance balance) {}

    @Override
    public String name() {
        return "holder show";
    }

    @Override
    @Messages("HolderShowVerb.summary=Show what lies in the pockets of a holder")
    public String summary() {
        return Bundle.HolderShowVerb_summary();
    }

    @Override
    public String feature() {
        return "storage";
    }

    @Override
    @Messages("HolderShowVerb.holder=its name or id")
    public List<Param> params() {
        return List.of(Param.positional("holder", "HOLDER", Bundle.HolderShowVerb_holder()));
    }

    @Override
    public Class<? extends Record> answers() {
        return Shown.class;
    }

    @Override
    public VerbResult run(VerbCall call) {
        return VerbSteps.named(
                call,
                Holder.TYPE,
                Holder::name,
                call.need("holder"),
                holder -> show(call.workshop().view(), holder));
    }

    @Messages({
        "HolderShowVerb.pocket=Pocket",
        "HolderShowVerb.symbol=Symbol",
        "HolderShowVerb.drill=Drill",
        "HolderShowVerb.amount=Amount",
        "# {0} - holder",
        "# {1} - used",
        "# {2} - pockets in words",
        "# {3} - pockets",
        "HolderShowVerb.inUse={0}, {1} of {2} {3,choice,1#pocket|1<pockets} used",
        "# {0} - holder",
        "# {1} - used",
        "# {2} - pockets in words",
        "# {3} - pockets",
        "# {4} - state",
        "HolderShowVerb.shown={0}, {1} of {2} {3,choice,1#pocket|1<pockets} used, {4}"
    })
    private static VerbResult show(View view, Stored<Holder> holder) {
        HolderLine line = HolderLine.of(view, new FreeHolders(view), holder);
        List<PocketLine> pockets = new ArrayList<>();
        TextTable table = new TextTable(
                Bundle.HolderShowVerb_pocket(),
                Bundle.HolderShowVerb_symbol(),
                Bundle.HolderShowVerb_drill(),
                Bundle.HolderShowVerb_amount());
        for (Pocket pocket : holder.value().pockets()) {
            Spot spot = new Spot.InPocket(holder.id(), pocket.id());
            List<String> symbols = symbols(view, spot);
            Map<Drill, Balance> there = view.contents(spot);
            pockets.add(new PocketLine(
                    pocket.id(),
                    pocket.name(),
                    pocket.capacity(),
                    pocket.mixed(),
                    symbols,
                    there.entrySet().stream()
                            .map(one -> new Content(DrillAnswer.of(one.getKey()), one.getValue()))
                            .toList()));
            there.forEach((drill, balance) ->
                    table.row(pocket.name(), String.join(" ", symbols), drill.words(), balance.words()));
        }
        String text = line.state().isEmpty()
                ? Bundle.HolderShowVerb_inUse(
                        line.name(), Balance.grouped(line.used()), Balance.grouped(line.pockets()), line.pockets())
                : Bundle.HolderShowVerb_shown(
                        line.name(),
                        Balance.grouped(line.used()),
                        Balance.grouped(line.pockets()),
                        line.pockets(),
                        line.state());
        return VerbResult.said(new Shown(line, pockets), table.isEmpty() ? text : text + "\n" + table);
    }

    private static List<String> symbols(View view, Spot spot) {
        return view.all(KitUp.TYPE).stream()
                .flatMap(kitUp -> kitUp.value().seats().stream())
                .filter(seat -> seat.spot().equals(spot))
                .map(KitUp.Seat::symbol)
                .distinct()
                .toList();
    }
}
