package org.glintery.storage.verbs;

import java.util.List;
import java.util.UUID;
import org.glintery.api.ledger.Amount;
import org.glintery.api.storage.Holder;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.verb.VerbSteps;
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
    public String summary() {
        return "Add a holder with rows and columns of pockets, named A1, A2 ... B1";
    }

    @Override
    public String feature() {
        return "storage";
    }

    @Override
    public List<Param> params() {
        return List.of(
                Param.positional("name", "NAME", "what it is called, such as 'Case A'"),
                Param.option("rows", "N", USUAL_ROWS + " when not said"),
                Param.option("columns", "N", USUAL_COLUMNS + " when not said"),
                Param.option("capacity", "N", "drills that one pocket takes, when known"));
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

    private static VerbResult add(VerbCall call, Holder holder) {
        UUID id = UUID.randomUUID();
        return VerbSteps.apply(
                call, StorageOfCall.of(call).addHolder(call.workshop().view(), id, holder), () -> {
                    var view = call.workshop().view();
                    HolderLine line =
                            HolderLine.of(view, view.find(Holder.TYPE, id).orElseThrow());
                    return VerbResult.said(
                            line, "Added " + line.name() + " with " + line.pockets() + " pockets (" + id + ").");
                });
    }
}
