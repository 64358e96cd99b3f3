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
import org.glintery.storage.FreeHolders;
import org.openide.util.NbBundle.Messages;

/**
 * A holder in a list.
 *
 * @param used pockets in which anything lies
 * @param holds the titles of the pieces that sit in it
 * @param toClear whether one of them is made and waits to be kitted down
 * @param free whether it can be kitted into
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

    static HolderLine of(View view, FreeHolders free, Stored<Holder> holder) {
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
                free.isFree(holder),
                value.lentTo());
    }

    /** In few words: "free", the piece, "to clear", who has it; nothing where only drills lie in it. */
    @Messages({
        "HolderLine.free=free",
        "# {0} - pieces",
        "HolderLine.toClear={0}, to clear",
        "# {0} - who",
        "HolderLine.lent=lent to {0}",
        "# {0} - pieces",
        "# {1} - who",
        "HolderLine.inUseAndLent={0}, lent to {1}"
    })
    String state() {
        if (free) {
            return Bundle.HolderLine_free();
        }
        String pieces = String.join("; ", holds);
        String inUse = toClear ? Bundle.HolderLine_toClear(pieces) : pieces;
        return lentTo.map(who ->
                        inUse.isEmpty() ? Bundle.HolderLine_lent(who) : Bundle.HolderLine_inUseAndLent(inUse, who))
                .orElse(inUse);
    }

    @Messages("HolderLine.gonePiece=a piece that is gone")
    private static String title(View view, UUID piece) {
        return view.find(Piece.TYPE, piece).map(p -> p.value().title()).orElse(Bundle.HolderLine_gonePiece());
    }
}
