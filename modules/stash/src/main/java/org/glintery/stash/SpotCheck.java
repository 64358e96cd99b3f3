package org.glintery.stash;

import java.util.Optional;
import org.glintery.api.Refusal;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Piece;
import org.glintery.api.storage.Holder;
import org.glintery.api.storage.Pocket;
import org.glintery.api.workshop.View;

/** Whether the pocket or canvas of a spot is in the workshop. A bag may be made in the same change. */
final class SpotCheck {

    private SpotCheck() {}

    static Optional<Refusal> refusal(View view, Spot spot) {
        if (spot instanceof Spot.InPocket in && pocket(view, in).isEmpty()) {
            return gone("pocket");
        }
        if (spot instanceof Spot.OnCanvas on
                && view.find(Piece.TYPE, on.piece()).isEmpty()) {
            return gone("piece");
        }
        return Optional.empty();
    }

    static Optional<Pocket> pocket(View view, Spot.InPocket spot) {
        return view.find(Holder.TYPE, spot.holder())
                .flatMap(holder -> holder.value().pockets().stream()
                        .filter(pocket -> pocket.id().equals(spot.pocket()))
                        .findFirst());
    }

    private static Optional<Refusal> gone(String what) {
        return Optional.of(
                new Refusal("no-spot", "That " + what + " is no longer in the workshop. Nothing was moved."));
    }
}
