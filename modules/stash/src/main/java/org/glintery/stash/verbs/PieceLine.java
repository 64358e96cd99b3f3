package org.glintery.stash.verbs;

import java.util.Optional;
import java.util.UUID;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.time.About;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;

/**
 * A piece in a list.
 *
 * @param lines of its legend
 * @param needed drills over all lines; absent when any line is silent
 */
public record PieceLine(
        UUID id,
        String title,
        Standing standing,
        Optional<About> since,
        Optional<UUID> kit,
        int lines,
        Optional<Long> needed) {

    static PieceLine of(View view, Stored<Piece> piece) {
        Legend legend = Legend.of(view, piece.id());
        return new PieceLine(
                piece.id(),
                piece.value().title(),
                piece.value().standing(),
                piece.value().standingSince(),
                piece.value().kit(),
                legend.lines().size(),
                legend.needed());
    }
}
