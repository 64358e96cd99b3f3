package org.glintery.workbench.shelves;

import java.util.Optional;
import java.util.UUID;
import org.glintery.api.framing.FramePlan;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.workshop.Picture;

/**
 * One piece on the shelves, or a kit that has no piece yet.
 *
 * @param id of the piece, or of the kit
 * @param standing empty for a kit without a piece
 * @param second the kit's name where it differs, and the size
 * @param searched all that is searched, in lower case
 * @param made what the row was made from, to know whether it is still fresh
 */
record ShelfRow(
        UUID id,
        String title,
        String second,
        Optional<Standing> standing,
        Optional<Picture> picture,
        String searched,
        Sources made) {

    boolean isKit() {
        return standing.isEmpty();
    }

    /** Compared by identity: views share what did not change. */
    record Sources(Piece piece, Optional<Kit> kit, Optional<Legend> legend, Optional<FramePlan> plan) {
        boolean same(Sources other) {
            return piece == other.piece && same(kit, other.kit) && same(legend, other.legend) && same(plan, other.plan);
        }

        private static <T> boolean same(Optional<T> one, Optional<T> other) {
            return one.orElse(null) == other.orElse(null);
        }
    }
}
