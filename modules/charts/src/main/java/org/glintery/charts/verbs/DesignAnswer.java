package org.glintery.charts.verbs;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.charts.Design;
import org.glintery.api.charts.Designs;
import org.glintery.api.charts.LineNeed;
import org.glintery.api.ledger.Balance;
import org.glintery.api.stash.Piece;
import org.glintery.api.verb.TextTable;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/**
 * A design with what it takes.
 *
 * @param piece the title of the piece that is made after it
 * @param laid how many of the drills are laid
 */
@Messages({
    "# {0} - title",
    "# {1} - columns",
    "# {2} - rows",
    "# {3} - width in cm",
    "# {4} - height in cm",
    "# {5} - drills",
    "# {6} - laid",
    "# {7} - id",
    "DesignAnswer.text={0}: {1} x {2} cells, {3} x {4} cm, {5} drills, {6} of them laid ({7}).",
    "# {0} - title of the piece",
    "DesignAnswer.piece=It belongs to {0}.",
    "DesignAnswer.symbol=Symbol",
    "DesignAnswer.drill=Drill",
    "DesignAnswer.colour=Colour",
    "DesignAnswer.drills=Drills",
    "DesignAnswer.laid=Laid",
    "DesignAnswer.left=Left"
})
record DesignAnswer(
        UUID id,
        String title,
        Optional<String> piece,
        int columns,
        int rows,
        double pitchMm,
        long drills,
        long laid,
        List<DesignLineAnswer> lines) {

    private static final double MM_A_CM = 10;

    static DesignAnswer of(View view, Designs designs, Stored<Design> stored) {
        Design design = stored.value();
        List<LineNeed> needs = designs.needs(view, stored.id());
        return new DesignAnswer(
                stored.id(),
                design.title(),
                design.piece()
                        .flatMap(piece -> view.find(Piece.TYPE, piece))
                        .map(piece -> piece.value().title()),
                design.grid().columns(),
                design.grid().rows(),
                design.grid().pitchMm(),
                needs.stream().mapToLong(LineNeed::drills).sum(),
                needs.stream().mapToLong(LineNeed::laid).sum(),
                needs.stream().map(DesignLineAnswer::of).toList());
    }

    /** In one or two sentences. */
    String text() {
        String text = Bundle.DesignAnswer_text(
                title,
                Balance.grouped(columns),
                Balance.grouped(rows),
                ChartMade.one(columns * pitchMm / MM_A_CM),
                ChartMade.one(rows * pitchMm / MM_A_CM),
                Balance.grouped(drills),
                Balance.grouped(laid),
                id);
        return text + piece.map(its -> " " + Bundle.DesignAnswer_piece(its)).orElse("");
    }

    /** With a row for each line. */
    String table() {
        TextTable table = new TextTable(
                Bundle.DesignAnswer_symbol(),
                Bundle.DesignAnswer_drill(),
                Bundle.DesignAnswer_colour(),
                Bundle.DesignAnswer_drills(),
                Bundle.DesignAnswer_laid(),
                Bundle.DesignAnswer_left());
        lines.forEach(line -> table.row(
                line.symbol(),
                line.drill().drill().words(),
                line.hex(),
                Balance.grouped(line.drills()),
                Balance.grouped(line.laid()),
                Balance.grouped(line.drills() - line.laid())));
        return text() + (table.isEmpty() ? "" : "\n" + table);
    }
}
