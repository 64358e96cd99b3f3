package org.glintery.activework.verbs;

import java.util.List;
import org.glintery.api.stash.Piece;
import org.glintery.api.time.About;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.verb.VerbSteps;
import org.glintery.api.workshop.Stored;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code bench start}: puts a piece on the bench. */
@ServiceProvider(service = Verb.class)
public final class BenchStartVerb implements Verb {

    @Override
    public String name() {
        return "bench start";
    }

    @Override
    @Messages("BenchStartVerb.summary=Put a piece on the bench")
    public String summary() {
        return Bundle.BenchStartVerb_summary();
    }

    @Override
    public String feature() {
        return "activework";
    }

    @Override
    @Messages("BenchStartVerb.piece=its title or id")
    public List<Param> params() {
        return List.of(Param.positional("piece", "PIECE", Bundle.BenchStartVerb_piece()), SaidOptions.when());
    }

    @Override
    public Class<? extends Record> answers() {
        return OnTheBench.class;
    }

    @Override
    public VerbResult run(VerbCall call) {
        return VerbSteps.named(call, Piece.TYPE, Piece::title, call.need("piece"), piece -> start(call, piece));
    }

    @Messages({"# {0} - title", "BenchStartVerb.done={0} is on the bench."})
    private static VerbResult start(VerbCall call, Stored<Piece> piece) {
        SaidOptions said = new SaidOptions(call);
        About on = said.on();
        if (said.misunderstood().isPresent()) {
            return VerbResult.wrongUsage(said.misunderstood().get());
        }
        return VerbSteps.apply(
                call,
                BenchOfCall.of(call).start(call.workshop().view(), piece.id(), on),
                () -> VerbResult.said(
                        OnTheBench.of(call, piece.id()),
                        Bundle.BenchStartVerb_done(piece.value().title())));
    }
}
