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
import org.openide.util.lookup.ServiceProvider;

/** {@code finish show}: the record of a made piece. */
@ServiceProvider(service = Verb.class)
public final class FinishShowVerb implements Verb {

    @Override
    public String name() {
        return "finish show";
    }

    @Override
    public String summary() {
        return "Show the finish of a piece";
    }

    @Override
    public String feature() {
        return "finishes";
    }

    @Override
    public List<Param> params() {
        return List.of(Param.positional("piece", "PIECE", "its title or id"));
    }

    @Override
    public Class<? extends Record> answers() {
        return FinishShown.class;
    }

    @Override
    public VerbResult run(VerbCall call) {
        return VerbSteps.named(call, Piece.TYPE, Piece::title, call.need("piece"), piece -> show(call, piece));
    }

    private static VerbResult show(VerbCall call, Stored<Piece> piece) {
        Optional<Stored<Finish>> finish = call.workshop().view().find(Finish.TYPE, piece.id());
        if (finish.isEmpty()) {
            return VerbResult.refused(
                    "no-finish",
                    piece.value().title() + " has no finish yet. Complete it, or write one with 'finish edit'.");
        }
        FinishShown shown = FinishShown.of(piece.id(), finish.get().value());
        return VerbResult.said(shown, shown.text());
    }
}
