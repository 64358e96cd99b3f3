package org.glintery.api.stash;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.PlainText;
import org.glintery.api.Stable;
import org.glintery.api.ledger.Shape;
import org.glintery.api.time.About;
import org.glintery.api.workshop.DocumentType;
import org.glintery.api.workshop.Picture;

/**
 * One thing to be made. It keeps one id from hoped for to framed.
 *
 * @param kit absent for a piece from an own picture
 * @param madeAgainFrom the piece it is a new making of
 * @param standingSince when it came to its standing
 * @param drillShape of most of its drills; apart from coverage
 * @param sections how many sections it is worked in, where the maker divides it so
 * @param pictures the first is shown on the job card
 * @param keptAt where the rolled canvas or the finish is
 * @param story what there is to tell, in the maker's words
 */
@Stable
public record Piece(
        String title,
        Optional<UUID> kit,
        Optional<UUID> madeAgainFrom,
        Standing standing,
        Optional<About> standingSince,
        Coverage coverage,
        Optional<Shape> drillShape,
        Canvas canvas,
        Optional<Integer> sections,
        List<Picture> pictures,
        Optional<UUID> keptAt,
        String story) {
    public Piece {
        title = PlainText.line(title);
        story = PlainText.lines(story);
        pictures = List.copyOf(pictures);
    }

    public static final DocumentType<Piece> TYPE = DocumentType.of("stash", "piece", Piece.class);

    public static Piece titled(String title, Standing standing) {
        return new Piece(
                title,
                Optional.empty(),
                Optional.empty(),
                standing,
                Optional.empty(),
                Coverage.NOT_SAID,
                Optional.empty(),
                Canvas.NOT_SAID,
                Optional.empty(),
                List.of(),
                Optional.empty(),
                "");
    }

    public Piece with(Standing newStanding, Optional<About> since) {
        return with(kit, newStanding, since, pictures, keptAt, story);
    }

    public Piece withKit(UUID newKit) {
        return with(Optional.of(newKit), standing, standingSince, pictures, keptAt, story);
    }

    public Piece withStory(String newStory) {
        return with(kit, standing, standingSince, pictures, keptAt, newStory);
    }

    public Piece withPictures(List<Picture> newPictures) {
        return with(kit, standing, standingSince, newPictures, keptAt, story);
    }

    public Piece withKeptAt(Optional<UUID> place) {
        return with(kit, standing, standingSince, pictures, place, story);
    }

    private Piece with(
            Optional<UUID> newKit,
            Standing newStanding,
            Optional<About> since,
            List<Picture> newPictures,
            Optional<UUID> place,
            String newStory) {
        return new Piece(
                title,
                newKit,
                madeAgainFrom,
                newStanding,
                since,
                coverage,
                drillShape,
                canvas,
                sections,
                newPictures,
                place,
                newStory);
    }
}
