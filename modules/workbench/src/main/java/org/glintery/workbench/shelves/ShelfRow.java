package org.glintery.workbench.shelves;

import java.util.Optional;
import java.util.UUID;
import org.glintery.api.stash.Standing;
import org.glintery.api.workshop.Picture;

/**
 * One piece on the shelves.
 *
 * @param second the kit's name where it differs, and the size
 * @param searched all that is searched, in lower case
 * @param made what the row was made from, to know whether it is still fresh
 */
record ShelfRow(
        UUID piece,
        String title,
        String second,
        Standing standing,
        Optional<Picture> picture,
        String searched,
        Sources made) {

    /** Compared by identity: views share what did not change. */
    record Sources(Object piece, Object kit, Object legend) {
        boolean same(Sources other) {
            return piece == other.piece && kit == other.kit && legend == other.legend;
        }
    }
}
