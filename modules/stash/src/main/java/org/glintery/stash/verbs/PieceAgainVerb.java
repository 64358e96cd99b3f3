package org.glintery.stash.verbs;

import java.util.List;
import java.util.UUID;
import org.glintery.api.stash.Piece;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.verb.VerbSteps;
import org.glintery.api.workshop.Stored;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code piece again}: adds a piece that is a new making of another. */
@ServiceProvider(service = Verb.class)
public final class PieceAgainVerb implements Verb {

    /** @param of the piece it is a new making of */
    public record Again(UUID id, String title, UUID of) {}

    @Override
    public String name() {
        return "piece again";
    }

    @Override
    @Messages("PieceAgainVerb.summary=Add a piece to make again, with the canvas and the legend of the first")
    public String summary() {
        return Bundle.PieceAgainVerb_summary();
    }

    @Override
    public String feature() {
        return "stash";
    }

    @Override
    @Messages("PieceAgainVerb.piece=its title or id")
    public List<Param> params() {
        return List.of(Param.positional("piece", "PIECE", Bundle.PieceAgainVerb_piece()));
    }

    @Override
    public Class<? extends Record> answers() {
        return Again.class;
    }

    @Override
    public VerbResult run(VerbCall call) {
        return VerbSteps.named(call, Piece.TYPE, Piece::title, call.need("piece"), piece -> again(call, piece));
    }

    @Messages({"# {0} - title", "# {1} - id", "PieceAgainVerb.done={0} is hoped for ({1})."})
    private static VerbResult again(VerbCall call, Stored<Piece> first) {
        UUID id = UUID.randomUUID();
        return VerbSteps.apply(
                call, StashOfCall.of(call).makeAgain(call.workshop().view(), first.id(), id), () -> {
                    String title = call.workshop()
                            .view()
                            .find(Piece.TYPE, id)
                            .orElseThrow()
                            .value()
                            .title();
                    return VerbResult.said(
                            new Again(id, title, first.id()), Bundle.PieceAgainVerb_done(title, id.toString()));
                });
    }
}
