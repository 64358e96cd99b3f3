package org.glintery.storage.verbs;

import java.util.List;
import org.glintery.api.ledger.Balance;
import org.glintery.api.storage.Holder;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.TextTable;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.storage.FreeHolders;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code holder list}: all holders and what is in them. */
@ServiceProvider(service = Verb.class)
public final class HolderListVerb implements Verb {

    /** The holders, in the order they came. */
    public record Holders(List<HolderLine> holders) {}

    @Override
    public String name() {
        return "holder list";
    }

    @Override
    @Messages("HolderListVerb.summary=List the holders, and which are free or wait to be cleared")
    public String summary() {
        return Bundle.HolderListVerb_summary();
    }

    @Override
    public String feature() {
        return "storage";
    }

    @Override
    @Messages("HolderListVerb.free=only free ones")
    public List<Param> params() {
        return List.of(Param.flag("free", Bundle.HolderListVerb_free()));
    }

    @Override
    public Class<? extends Record> answers() {
        return Holders.class;
    }

    @Override
    @Messages({
        "HolderListVerb.holder=Holder",
        "HolderListVerb.pockets=Pockets",
        "HolderListVerb.used=Used",
        "HolderListVerb.state=State",
        "HolderListVerb.id=Id",
        "HolderListVerb.none=No holders.",
        "HolderListVerb.noneFree=No free holders."
    })
    public VerbResult run(VerbCall call) {
        var view = call.workshop().view();
        FreeHolders free = new FreeHolders(view);
        List<HolderLine> holders = view.all(Holder.TYPE).stream()
                .map(holder -> HolderLine.of(view, free, holder))
                .filter(line -> !call.flag("free") || line.free())
                .toList();
        TextTable table = new TextTable(
                Bundle.HolderListVerb_holder(),
                Bundle.HolderListVerb_pockets(),
                Bundle.HolderListVerb_used(),
                Bundle.HolderListVerb_state(),
                Bundle.HolderListVerb_id());
        holders.forEach(line -> table.row(
                line.name(), Balance.grouped(line.pockets()), Balance.grouped(line.used()), line.state(), line.id()));
        String none = call.flag("free") ? Bundle.HolderListVerb_noneFree() : Bundle.HolderListVerb_none();
        return VerbResult.said(new Holders(holders), table.isEmpty() ? none : table.toString());
    }
}
