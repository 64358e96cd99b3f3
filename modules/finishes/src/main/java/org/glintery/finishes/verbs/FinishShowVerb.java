package org.glintery.finishes.verbs;

import java.util.List;
import java.util.Optional;
import org.glintery.api.finishes.Finish;
import org.glintery.api.stash.Piece;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.verb.VerbSteps;
import org.glintery.api.workshop.Stored;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code finish show}: the record of a made piece. */
@ServiceProvider(service = Verb.class)
public final class FinishShowVerb implements Verb {

    @Override
    public String name() {
        return "finish show";
    }

    @Override
    @Messages("FinishShowVerb.summary=Show the finish of a piece")
    public String summary() {
        return Bundle.FinishShowVerb_summary();
    }

    @Override
    public String feature() {
        return "finishes";
    }

    @Override
    @Messages("FinishShowVerb.piece=its title or id")
    public List<Param> params() {
        return List.of(Param.positional("piece", "PIECE", Bundle.FinishShowVerb_piece()));
    }

    @Override
    public Class<? extends Record> answers() {
        return FinishShown.class;
    }

    @Override
    public VerbResult run(VerbCall call) {
        return VerbSteps.named(call, Piece.TYPE, Piece::title, call.need("piece"), piece -> show(call, piece));
    }

    @Messages({
        "# {0} - title",
        "FinishShowVerb.none={0} has no finish yet. Complete it, or write one with ''finish edit''."
    })
    private static VerbResult show(VerbCall call, Stored<Piece> piece) {
        Optional<Stored<Finish>> finish = call.workshop().view().find(Finish.TYPE, piece.id());
        if (finish.isEmpty()) {
            return VerbResult.refused(
                    "no-finish", Bundle.FinishShowVerb_none(piece.value().title()));
        }
        FinishShown shown = FinishShown.of(piece.id(), finish.get().value());
        return VerbResult.said(shown, shown.text());
    }
}
