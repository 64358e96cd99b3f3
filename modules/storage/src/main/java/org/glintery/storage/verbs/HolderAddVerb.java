package org.glintery.storage.verbs;

import java.util.List;
import java.util.UUID;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Balance;
import org.glintery.api.storage.Holder;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.verb.VerbSteps;
import org.glintery.storage.FreeHolders;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code holder add}: a holder of equal pockets. */
@ServiceProvider(service = Verb.class)
public final class HolderAddVerb implements Verb {

    private static final int USUAL_ROWS = 6;
    private static final int USUAL_COLUMNS = 10;
    private static final int MOST = 100;

    @Override
    public String name() {
        return "holder add";
    }

    @Override
    @Messages("HolderAddVerb.summary=Add a holder with rows and columns of pockets, named A1, A2 ... B1")
    public String summary() {
        return Bundle.HolderAddVerb_summary();
    }

    @Override
    public String feature() {
        return "storage";
    }

    @Override
    @Messages({
        "HolderAddVerb.name=what it is called, such as 'Case A'",
        "# {0} - usual number",
        "HolderAddVerb.usual={0} when not said",
        "HolderAddVerb.capacity=drills that one pocket takes, when known"
    })
    public List<Param> params() {
        return List.of(
                Param.positional("name", "NAME", Bundle.HolderAddVerb_name()),
                Param.option("rows", "N", Bundle.HolderAddVerb_usual(Balance.grouped(USUAL_ROWS))),
                Param.option("columns", "N", Bundle.HolderAddVerb_usual(Balance.grouped(USUAL_COLUMNS))),
                Param.option("capacity", "N", Bundle.HolderAddVerb_capacity()));
    }

    @Override
    public Class<? extends Record> answers() {
        return HolderLine.class;
    }

    @Override
    public VerbResult run(VerbCall call) {
        return Asked.whole(
                call,
                "rows",
                1,
                MOST,
                rows -> Asked.whole(
                        call,
                        "columns",
                        1,
                        MOST,
                        columns -> Asked.whole(
                                call,
                                "capacity",
                                1,
                                Amount.MOST,
                                capacity -> add(
                                        call,
                                        Holder.grid(
                                                call.need("name").strip(),
                                                rows.orElse((long) USUAL_ROWS).intValue(),
                                                columns.orElse((long) USUAL_COLUMNS)
                                                        .intValue(),
                                                capacity)))));
    }

    @Messages({
        "# {0} - holder",
        "# {1} - pockets",
        "# {2} - pockets in words",
        "# {3} - id",
        "HolderAddVerb.added=Added {0} with {1,choice,1#1 pocket|1<{2} pockets} ({3})."
    })
    private static VerbResult add(VerbCall call, Holder holder) {
        UUID id = UUID.randomUUID();
        return VerbSteps.apply(
                call, StorageOfCall.of(call).addHolder(call.workshop().view(), id, holder), () -> {
                    var view = call.workshop().view();
                    HolderLine line = HolderLine.of(
                            view,
                            new FreeHolders(view),
                            view.find(Holder.TYPE, id).orElseThrow());
                    return VerbResult.said(
                            line,
                            Bundle.HolderAddVerb_added(
                                    line.name(), line.pockets(), Balance.grouped(line.pockets()), id));
                });
    }
}
