package org.glintery.workbench.parts;

import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Stable;
import org.glintery.api.finishes.Finish;
import org.glintery.api.stash.Piece;
import org.glintery.api.workshop.Picture;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;

/**
 * What a piece is recognised by in a list. Pure.
 *
 * @param title empty when the piece is gone
 * @param picture a photo of the finish where there is one, else the first picture of the piece
 */
@Stable
public record PieceFace(UUID piece, String title, Optional<Picture> picture) {

    public static PieceFace of(View view, UUID piece) {
        Optional<Piece> found = view.find(Piece.TYPE, piece).map(Stored::value);
        Optional<Picture> photo = view.find(Finish.TYPE, piece)
                .flatMap(finish -> finish.value().photos().stream().findFirst());
        return new PieceFace(
                piece,
                found.map(Piece::title).orElse(""),
                photo.or(() -> found.flatMap(p -> p.pictures().stream().findFirst())));
    }
}
