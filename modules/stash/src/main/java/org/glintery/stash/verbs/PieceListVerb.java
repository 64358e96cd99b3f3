package org.glintery.stash.verbs;

import java.util.List;
import java.util.Optional;
import org.glintery.api.Result;
import org.glintery.api.ledger.Balance;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.TextTable;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code piece list}: all pieces, or those of one standing. */
@ServiceProvider(service = Verb.class)
public final class PieceListVerb implements Verb {

    /** The pieces, in the order they came. */
    public record Pieces(List<PieceLine> pieces) {}

    @Override
    public String name() {
        return "piece list";
    }

    @Override
    @Messages("PieceListVerb.summary=List the pieces")
    public String summary() {
        return Bundle.PieceListVerb_summary();
    }

    @Override
    public String feature() {
        return "stash";
    }

    @Override
    @Messages({"# {0} - words", "PieceListVerb.only=only these: {0}"})
    public List<Param> params() {
        return List.of(Param.option("standing", "STANDING", Bundle.PieceListVerb_only(WordOption.all(Standing.class))));
    }

    @Override
    public Class<? extends Record> answers() {
        return Pieces.class;
    }

    @Override
    public VerbResult run(VerbCall call) {
        return VerbEnd.of(
                WordOption.word(call, "standing", Standing.class).then(standing -> Result.ok(list(call, standing))));
    }

    @Messages({
        "PieceListVerb.title=Title",
        "PieceListVerb.standing=Standing",
        "PieceListVerb.lines=Lines",
        "PieceListVerb.drills=Drills",
        "PieceListVerb.id=Id",
        "PieceListVerb.notKnown=not known",
        "PieceListVerb.none=No pieces."
    })
    private static VerbResult list(VerbCall call, Optional<Standing> standing) {
        var view = call.workshop().view();
        List<PieceLine> pieces = view.all(Piece.TYPE).stream()
                .filter(piece ->
                        standing.filter(s -> s != piece.value().standing()).isEmpty())
                .map(piece -> PieceLine.of(view, piece))
                .toList();
        TextTable table = new TextTable(
                Bundle.PieceListVerb_title(),
                Bundle.PieceListVerb_standing(),
                Bundle.PieceListVerb_lines(),
                Bundle.PieceListVerb_drills(),
                Bundle.PieceListVerb_id());
        pieces.forEach(piece -> table.row(
                piece.title(),
                StandingWords.of(piece.standing()),
                Balance.grouped(piece.lines()),
                piece.needed().map(Balance::grouped).orElse(Bundle.PieceListVerb_notKnown()),
                piece.id()));
        return VerbResult.said(new Pieces(pieces), table.isEmpty() ? Bundle.PieceListVerb_none() : table.toString());
    }
}
