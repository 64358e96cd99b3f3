package org.glintery.storage.verbs;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Piece;
import org.glintery.api.storage.Holder;
import org.glintery.api.storage.KitUp;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/**
 * A holder in a list.
 *
 * @param used pockets in which anything lies
 * @param holds the titles of the pieces that sit in it
 * @param toClear whether one of them is made and waits to be kitted down
 */
public record HolderLine(
        UUID id,
        String name,
        int rows,
        int columns,
        int pockets,
        int used,
        List<String> holds,
        boolean toClear,
        boolean free,
        Optional<String> lentTo) {

    static HolderLine of(View view, Stored<Holder> holder) {
        Holder value = holder.value();
        int used = (int) value.pockets().stream()
                .filter(pocket -> !view.contents(new Spot.InPocket(holder.id(), pocket.id()))
                        .isEmpty())
                .count();
        List<Stored<KitUp>> kitUps = view.all(KitUp.TYPE).stream()
                .filter(kitUp -> kitUp.value().holder().equals(holder.id()))
                .toList();
        return new HolderLine(
                holder.id(),
                value.name(),
                value.rows(),
                value.columns(),
                value.pockets().size(),
                used,
                kitUps.stream().map(kitUp -> title(view, kitUp.id())).toList(),
                kitUps.stream().anyMatch(kitUp -> kitUp.value().toClear()),
                used == 0 && kitUps.isEmpty(),
                value.lentTo());
    }

    /** In one word or two: "free", "to clear", the piece, or what is in use. */
    @Messages({"HolderLine.free=free", "# {0} - pieces", "HolderLine.toClear={0}, to clear"})
    String state() {
        if (free) {
            return Bundle.HolderLine_free();
        }
        String pieces = String.join("; ", holds);
        return toClear ? Bundle.HolderLine_toClear(pieces) : pieces;
    }

    @Messages("HolderLine.gonePiece=a piece that is gone")
    private static String title(View view, UUID piece) {
        return view.find(Piece.TYPE, piece).map(p -> p.value().title()).orElse(Bundle.HolderLine_gonePiece());
    }
}
