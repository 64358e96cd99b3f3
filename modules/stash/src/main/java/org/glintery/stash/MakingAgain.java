package org.glintery.stash;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.ledger.Amount;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/** A piece made again is a piece of its own, which says of which it is a new making. Any thread. */
@Messages({"# {0} - title", "MakingAgain.title={0}, again"})
final class MakingAgain {
    private final View view;

    MakingAgain(View view) {
        this.view = view;
    }

    Result<ChangeSet> of(UUID id, UUID again) {
        Optional<Piece> first = view.find(Piece.TYPE, id).map(Stored::value);
        if (first.isEmpty()) {
            return PieceEdits.noPiece();
        }
        List<LegendLine> lines = Legend.of(view, id).lines().stream()
                .map(MakingAgain::unsupplied)
                .toList();
        return new KitShelving(view).addPiece(again, hopedFor(id, first.get()), lines);
    }

    private static Piece hopedFor(UUID id, Piece first) {
        return new Piece(
                Bundle.MakingAgain_title(first.title()),
                Optional.empty(),
                Optional.of(id),
                Standing.HOPED_FOR,
                Optional.empty(),
                first.coverage(),
                first.drillShape(),
                first.canvas(),
                first.sections(),
                first.pictures().stream().limit(1).toList(),
                Optional.empty(),
                "");
    }

    private static LegendLine unsupplied(LegendLine line) {
        return new LegendLine(
                line.symbol(), line.drill(), line.needed(), Amount.unknown(), Optional.empty(), line.extras());
    }
}
