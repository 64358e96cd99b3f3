package org.glintery.stash.verbs;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Balance;
import org.glintery.api.stash.CardEntry;
import org.glintery.api.stash.ColourCard;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.LineSupply;
import org.glintery.api.stash.Piece;
import org.glintery.api.storage.KeepingPlaces;
import org.glintery.api.verb.DrillAnswer;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.TextTable;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.verb.VerbSteps;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code piece show}: a piece, its legend and how its drills stand. */
@ServiceProvider(service = Verb.class)
public final class PieceShowVerb implements Verb {

    /** All there is to a piece here. */
    public record Shown(UUID id, Piece piece, List<LegendAnswer> legend, List<SupplyAnswer> supplies) {}

    /** A line as printed in the legend. */
    public record LegendAnswer(
            String symbol, DrillAnswer drill, Optional<Long> needed, Amount supplied, Optional<Integer> bags) {}

    /** How a drill stands; lines that share one are told of on the first. @param line from 1 */
    public record SupplyAnswer(
            int line, String symbol, DrillAnswer drill, Balance laid, Balance atHand, Optional<Balance> missing) {}

    @Override
    public String name() {
        return "piece show";
    }

    @Override
    @Messages("PieceShowVerb.summary=Show a piece, its legend, and what of it is laid, at hand and missing")
    public String summary() {
        return Bundle.PieceShowVerb_summary();
    }

    @Override
    public String feature() {
        return "stash";
    }

    @Override
    @Messages("PieceShowVerb.piece=its title or id")
    public List<Param> params() {
        return List.of(Param.positional("piece", "PIECE", Bundle.PieceShowVerb_piece()));
    }

    @Override
    public Class<? extends Record> answers() {
        return Shown.class;
    }

    @Override
    public VerbResult run(VerbCall call) {
        return VerbSteps.named(call, Piece.TYPE, Piece::title, call.need("piece"), piece -> show(call, piece));
    }

    @Messages("PieceShowVerb.noLegend=No legend yet.")
    private static VerbResult show(VerbCall call, Stored<Piece> piece) {
        View view = call.workshop().view();
        List<LegendLine> lines = Legend.of(view, piece.id()).lines();
        List<LineSupply> supplies = StashOfCall.of(call).supplies(view, piece.id());
        Shown shown = new Shown(
                piece.id(),
                piece.value(),
                lines.stream().map(PieceShowVerb::line).toList(),
                supplies.stream().map(PieceShowVerb::supply).toList());
        TextTable table = table(view, supplies);
        String text = table.isEmpty() ? Bundle.PieceShowVerb_noLegend() : table.toString();
        return VerbResult.said(shown, head(piece.value()) + kept(view, piece.value()) + "\n" + text);
    }

    @Messages({"# {0} - place", "PieceShowVerb.keptAt=Kept at {0}"})
    private static String kept(View view, Piece piece) {
        String place = KeepingPlaces.name(view, piece.keptAt());
        return place.isEmpty() ? "" : "\n" + Bundle.PieceShowVerb_keptAt(place);
    }

    @Messages({
        "# {0} - title",
        "# {1} - standing",
        "PieceShowVerb.head={0}, {1}",
        "# {0} - title",
        "# {1} - standing",
        "# {2} - since when",
        "PieceShowVerb.since={0}, {1} since {2}"
    })
    private static String head(Piece piece) {
        String standing = StandingWords.of(piece.standing());
        return piece.standingSince()
                .map(since -> Bundle.PieceShowVerb_since(piece.title(), standing, since.words()))
                .orElseGet(() -> Bundle.PieceShowVerb_head(piece.title(), standing));
    }

    @Messages({
        "PieceShowVerb.symbol=Symbol",
        "PieceShowVerb.drill=Drill",
        "PieceShowVerb.name=Name",
        "PieceShowVerb.needed=Needed",
        "PieceShowVerb.laid=Laid",
        "PieceShowVerb.atHand=At hand",
        "PieceShowVerb.missing=Missing",
        "PieceShowVerb.notKnown=not known"
    })
    private static TextTable table(View view, List<LineSupply> supplies) {
        TextTable table = new TextTable(
                Bundle.PieceShowVerb_symbol(),
                Bundle.PieceShowVerb_drill(),
                Bundle.PieceShowVerb_name(),
                Bundle.PieceShowVerb_needed(),
                Bundle.PieceShowVerb_laid(),
                Bundle.PieceShowVerb_atHand(),
                Bundle.PieceShowVerb_missing());
        supplies.forEach(supply -> table.row(
                supply.line().symbol(),
                supply.line().drill().words(),
                name(view, supply.line()),
                supply.line().needed().map(Balance::grouped).orElse(Bundle.PieceShowVerb_notKnown()),
                supply.laid().words(),
                supply.atHand().words(),
                supply.missing().map(Balance::words).orElse(Bundle.PieceShowVerb_notKnown())));
        return table;
    }

    private static String name(View view, LegendLine line) {
        return ColourCard.entry(view, line.drill().card(), line.drill().code())
                .flatMap(CardEntry::name)
                .orElse("");
    }

    private static LegendAnswer line(LegendLine line) {
        return new LegendAnswer(
                line.symbol(), DrillAnswer.of(line.drill()), line.needed(), line.supplied(), line.bags());
    }

    private static SupplyAnswer supply(LineSupply supply) {
        return new SupplyAnswer(
                supply.index() + 1,
                supply.line().symbol(),
                DrillAnswer.of(supply.line().drill()),
                supply.laid(),
                supply.atHand(),
                supply.missing());
    }
}
