package org.glintery.stash;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.stash.CardEntry;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.Piece;
import org.glintery.api.storage.BagNames;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.NewPicture;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/** Replaces a piece's legend and books what its supplies changed by. Any thread. */
final class LegendSaving {

    private final View view;

    LegendSaving(View view) {
        this.view = view;
    }

    @Messages({"# {0} - title", "LegendSaving.change=Change the legend of {0}"})
    Result<ChangeSet> save(UUID id, List<LegendLine> lines, Map<String, Map<String, CardEntry>> cards) {
        Optional<Stored<Piece>> piece = view.find(Piece.TYPE, id);
        if (piece.isEmpty()) {
            return PieceEdits.noPiece();
        }
        Optional<Kit> kit = PieceEdits.kitOf(view, piece.get().value());
        int drillsPerBag = SuppliesBooked.drillsPerBag(view, id, kit.flatMap(Kit::source));
        Optional<Refusal> refusal = LegendCheck.refusal(lines, drillsPerBag);
        if (refusal.isPresent()) {
            return Result.refused(refusal.get());
        }
        Piece value = piece.get().value();
        ChangeSet.Builder change = ChangeSet.named(Bundle.LegendSaving_change(value.title()));
        Optional<Stored<Legend>> old = view.find(Legend.TYPE, id);
        if (old.isPresent()) {
            change.replace(Legend.TYPE, old.get(), old.get().value().withLines(lines));
        } else {
            change.create(Legend.TYPE, id, Legend.of(lines));
        }
        CardLearning learning = new CardLearning(view)
                .told(cards)
                .used(lines.stream().map(LegendLine::drill).toList());
        learning.into(change);
        new SupplyBooking(view, id, value, kit, new BagNames(view)).book(change, lines);
        List<String> warnings = new ArrayList<>(LegendCheck.warnings(lines));
        warnings.addAll(learning.warnings());
        return Result.ok(change.build(), warnings);
    }

    @Messages({"# {0} - title", "LegendSaving.photo=Keep a photo of the legend of {0}"})
    Result<ChangeSet> keepPhoto(UUID id, NewPicture photo) {
        Optional<Stored<Piece>> piece = view.find(Piece.TYPE, id);
        if (piece.isEmpty()) {
            return PieceEdits.noPiece();
        }
        ChangeSet.Builder change =
                ChangeSet.named(Bundle.LegendSaving_photo(piece.get().value().title()));
        Legend now = new Legend(Legend.of(view, id).lines(), Optional.of(photo.picture()));
        view.find(Legend.TYPE, id)
                .ifPresentOrElse(
                        old -> change.replace(Legend.TYPE, old, now), () -> change.create(Legend.TYPE, id, now));
        return Result.ok(change.blob(photo.blob()).build());
    }
}
