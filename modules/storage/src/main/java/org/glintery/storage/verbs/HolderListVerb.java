package org.glintery.storage.verbs;

import java.util.List;
import org.glintery.api.storage.Holder;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.TextTable;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
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
    public String summary() {
        return "List the holders, and which are free or wait to be cleared";
    }

    @Override
    public String feature() {
        return "storage";
    }

    @Override
    public List<Param> params() {
        return List.of(Param.flag("free", "only free ones"));
    }

    @Override
    public Class<? extends Record> answers() {
        return Holders.class;
    }

    @Override
    public VerbResult run(VerbCall call) {
        var view = call.workshop().view();
        List<HolderLine> holders = view.all(Holder.TYPE).stream()
                .map(holder -> HolderLine.of(view, holder))
                .filter(line -> !call.flag("free") || line.free())
                .toList();
        TextTable table = new TextTable("Holder", "Pockets", "Used", "State", "Id");
        holders.forEach(line -> table.row(line.name(), line.pockets(), line.used(), line.state(), line.id()));
        return VerbResult.said(new Holders(holders), table.isEmpty() ? "No holders." : table.toString());
    }
}
