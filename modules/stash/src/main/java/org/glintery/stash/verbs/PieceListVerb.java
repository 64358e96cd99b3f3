package org.glintery.stash.verbs;

import java.util.List;
import java.util.Optional;
import org.glintery.api.Result;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.TextTable;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
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
    public String summary() {
        return "List the pieces";
    }

    @Override
    public String feature() {
        return "stash";
    }

    @Override
    public List<Param> params() {
        return List.of(Param.option("standing", "STANDING", "only these: " + WordOption.all(Standing.class)));
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

    private static VerbResult list(VerbCall call, Optional<Standing> standing) {
        var view = call.workshop().view();
        List<PieceLine> pieces = view.all(Piece.TYPE).stream()
                .filter(piece ->
                        standing.filter(s -> s != piece.value().standing()).isEmpty())
                .map(piece -> PieceLine.of(view, piece))
                .toList();
        TextTable table = new TextTable("Title", "Standing", "Lines", "Drills", "Id");
        pieces.forEach(piece -> table.row(
                piece.title(),
                WordOption.words(piece.standing()),
                piece.lines(),
                piece.needed().map(String::valueOf).orElse("not known"),
                piece.id()));
        return VerbResult.said(new Pieces(pieces), table.isEmpty() ? "No pieces." : table.toString());
    }
}
