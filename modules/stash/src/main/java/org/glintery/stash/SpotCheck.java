package org.glintery.stash;

import java.util.Optional;
import org.glintery.api.Refusal;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Piece;
import org.glintery.api.storage.Holder;
import org.glintery.api.storage.Pocket;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/** Whether the pocket or canvas of a spot is in the workshop. A bag may be made in the same change. */
final class SpotCheck {

    private SpotCheck() {}

    @Messages({
        "SpotCheck.pocket=That pocket is no longer in the workshop. Nothing was changed.",
        "SpotCheck.piece=That piece is no longer in the workshop. Nothing was changed."
    })
    static Optional<Refusal> refusal(View view, Spot spot) {
        if (spot instanceof Spot.InPocket in && pocket(view, in).isEmpty()) {
            return gone(Bundle.SpotCheck_pocket());
        }
        if (spot instanceof Spot.OnCanvas on
                && view.find(Piece.TYPE, on.piece()).isEmpty()) {
            return gone(Bundle.SpotCheck_piece());
        }
        return Optional.empty();
    }

    static Optional<Pocket> pocket(View view, Spot.InPocket spot) {
        return view.find(Holder.TYPE, spot.holder())
                .flatMap(holder -> holder.value().pockets().stream()
                        .filter(pocket -> pocket.id().equals(spot.pocket()))
                        .findFirst());
    }

    private static Optional<Refusal> gone(String text) {
        return Optional.of(new Refusal("no-spot", text));
    }
}
