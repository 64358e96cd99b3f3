package org.glintery.stash;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.Piece;
import org.glintery.api.storage.BagNames;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Settings;
import org.glintery.api.workshop.Settings.Depth;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/** Begins to keep drills where only the book was kept: what came with the pieces that are in the house is booked at once. */
final class DepthRaising {
    private final View view;
    private final BagNames names;
    private final List<String> warnings = new ArrayList<>();

    DepthRaising(View view) {
        this.view = view;
        this.names = new BagNames(view);
    }

    @Messages("DepthRaising.keep=Keep the drills as well")
    Result<ChangeSet> raise() {
        ChangeSet.Builder change = ChangeSet.named(Bundle.DepthRaising_keep());
        if (!Settings.keepsDrills(view)) {
            Settings.choose(change, view, Depth.DRILLS_AS_WELL);
            view.all(Piece.TYPE).forEach(piece -> book(change, piece));
        }
        return Result.ok(change.build(), warnings);
    }

    @Messages({"# {0} - title", "# {1} - why not", "DepthRaising.notBooked=What came with {0} was not booked. {1}"})
    private void book(ChangeSet.Builder change, Stored<Piece> piece) {
        UUID id = piece.id();
        List<LegendLine> lines = Legend.of(view, id).lines();
        if (lines.isEmpty()) {
            return;
        }
        Optional<Kit> kit = PieceEdits.kitOf(view, piece.value());
        Optional<Refusal> refusal =
                LegendCheck.refusal(lines, SuppliesBooked.drillsPerBag(view, id, kit.flatMap(Kit::source)));
        if (refusal.isPresent()) {
            warnings.add(Bundle.DepthRaising_notBooked(
                    piece.value().title(), refusal.get().text()));
            return;
        }
        new SupplyBooking(view, id, piece.value(), kit, names).bookFromNowOn(change, lines);
    }
}
