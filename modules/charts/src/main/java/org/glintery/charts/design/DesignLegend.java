package org.glintery.charts.design;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.charts.Design;
import org.glintery.api.charts.DesignCells;
import org.glintery.api.charts.DesignPicture;
import org.glintery.api.charts.LineNeed;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Drill;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.stash.Stash;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/** Makes the lines of a design the legend of a piece. Any thread. */
@Messages({
    "DesignLegend.off=Legends can't be written because kits and pieces are switched off. Nothing was changed.",
    "# {0} - title of the design",
    "# {1} - title of the piece",
    "DesignLegend.sentence=Make {0} the legend of {1}",
    "# {0} - title of the design",
    "DesignLegend.newPiece=Make a piece of the design {0}"
})
final class DesignLegend {

    private final View view;
    private final Stored<Design> design;
    private final Stash stash;

    private DesignLegend(View view, Stored<Design> design, Stash stash) {
        this.view = view;
        this.design = design;
        this.stash = stash;
    }

    static Result<DesignLegend> of(View view, Stored<Design> design, Optional<Stash> stash) {
        return stash.map(there -> Result.ok(new DesignLegend(view, design, there)))
                .orElseGet(() -> Result.refused("no-stash", Bundle.DesignLegend_off()));
    }

    Result<ChangeSet> into(UUID piece) {
        Optional<Piece> found = view.find(Piece.TYPE, piece).map(Stored::value);
        if (found.isEmpty()) {
            return Result.refused("no-piece", Bundle.DesignKeeping_noPiece());
        }
        Piece old = found.get();
        Piece sized = DesignCanvas.on(old, design.value(), cells());
        ChangeSet own =
                belongingTo(piece, Bundle.DesignLegend_sentence(design.value().title(), old.title()));
        return stash.saveLegend(view, piece, lines(Legend.of(view, piece).lines()))
                .then(legend -> Result.ok(own.join(legend)))
                .then(so -> sized.equals(old)
                        ? Result.ok(so)
                        : stash.editPiece(view, piece, sized).then(edited -> Result.ok(so.join(edited))));
    }

    Result<ChangeSet> intoNew(UUID piece) {
        Piece made = Piece.titled(design.value().title(), Standing.HOPED_FOR)
                .withPictures(design.value().picture().map(DesignPicture::picture).stream()
                        .toList());
        ChangeSet own =
                belongingTo(piece, Bundle.DesignLegend_newPiece(design.value().title()));
        return stash.addPiece(view, piece, DesignCanvas.on(made, design.value(), cells()), lines(List.of()))
                .then(added -> Result.ok(own.join(added)));
    }

    private ChangeSet belongingTo(UUID piece, String sentence) {
        ChangeSet.Builder change = ChangeSet.named(sentence);
        if (!design.value().piece().equals(Optional.of(piece))) {
            change.replace(Design.TYPE, design, design.value().withPiece(Optional.of(piece)));
        }
        return change.build();
    }

    private DesignCells cells() {
        return DesignCells.of(view, design.id()).orElseThrow();
    }

    /** The design's lines that are used, then those of the old legend of which drills came; those are not needed. */
    private List<LegendLine> lines(List<LegendLine> old) {
        List<LegendLine> lines = new ArrayList<>();
        Set<Drill> told = new HashSet<>();
        Set<String> symbols = new HashSet<>();
        for (LineNeed need : KeptDesigns.needs(design.value(), cells())) {
            if (need.drills() > 0) {
                Drill drill = need.line().drill();
                boolean first = told.add(drill);
                symbols.add(need.line().symbol());
                lines.add(old.stream()
                        .filter(line -> first && line.drill().equals(drill))
                        .findFirst()
                        .map(line -> needing(line, need.line().symbol(), need.drills()))
                        .orElseGet(() -> needing(unsupplied(drill), need.line().symbol(), need.drills())));
            }
        }
        for (LegendLine line : old) {
            if (isSupplied(line) && told.add(line.drill())) {
                lines.add(needing(line, unused(line.symbol(), symbols), 0));
            }
        }
        return lines;
    }

    private static boolean isSupplied(LegendLine line) {
        return line.supplied().count().filter(count -> count > 0).isPresent()
                || line.bags().filter(bags -> bags > 0).isPresent();
    }

    private static LegendLine unsupplied(Drill drill) {
        return new LegendLine("", drill, Optional.empty(), Amount.unknown(), Optional.empty(), Map.of());
    }

    private static LegendLine needing(LegendLine line, String symbol, long drills) {
        return new LegendLine(symbol, line.drill(), Optional.of(drills), line.supplied(), line.bags(), line.extras());
    }

    private static String unused(String symbol, Set<String> taken) {
        String free = symbol;
        while (!taken.add(free)) {
            free += "'";
        }
        return free;
    }
}
