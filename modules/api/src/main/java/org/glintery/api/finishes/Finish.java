package org.glintery.api.finishes;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.glintery.api.PlainText;
import org.glintery.api.Stable;
import org.glintery.api.time.About;
import org.glintery.api.workshop.DocumentType;
import org.glintery.api.workshop.Picture;

/**
 * The record of a made piece; the document has the piece's id. A title and "about then" alone are valid.
 *
 * @param finishedOn when, as exactly as it is remembered
 * @param score 1 to 5, or none
 * @param making how it was to make
 * @param altered what was changed from the design as sold
 * @param where where it was made
 * @param photos pictures of the finish
 * @param sketches drawings of it
 * @param later fields the maker left to be written later
 */
@Stable
public record Finish(
        String title,
        Optional<About> startedOn,
        Optional<About> finishedOn,
        Optional<Integer> score,
        String making,
        String altered,
        List<String> tools,
        Optional<String> where,
        Sealing sealing,
        List<Picture> photos,
        List<Picture> sketches,
        String comments,
        Set<Field> later) {
    public static final DocumentType<Finish> TYPE = DocumentType.of("finishes", "finish", Finish.class);

    /** Whether the finish was sealed. */
    public enum Sealing {
        NOT_SAID,
        SEALED,
        NOT_SEALED
    }

    /** What can be left for later. */
    public enum Field {
        FINISHED_ON,
        SCORE,
        MAKING,
        ALTERED,
        TOOLS,
        WHERE,
        SEALING,
        PICTURE,
        COMMENTS
    }

    public Finish {
        title = PlainText.line(title);
        making = PlainText.lines(making);
        altered = PlainText.lines(altered);
        where = PlainText.line(where);
        comments = PlainText.lines(comments);
        tools = tools.stream().map(PlainText::line).toList();
        photos = List.copyOf(photos);
        sketches = List.copyOf(sketches);
        later = java.util.Collections.unmodifiableSet(new java.util.TreeSet<>(later));
    }

    public Finish withLater(Set<Field> newLater) {
        return new Finish(
                title,
                startedOn,
                finishedOn,
                score,
                making,
                altered,
                tools,
                where,
                sealing,
                photos,
                sketches,
                comments,
                newLater);
    }

    /** What is told when the piece is completed; the rest stays. */
    public Finish withCompletion(
            Optional<About> started, Optional<About> finished, Optional<Integer> newScore, String newComments) {
        return new Finish(
                title,
                started,
                finished,
                newScore,
                making,
                altered,
                tools,
                where,
                sealing,
                photos,
                sketches,
                newComments,
                later);
    }

    public static Finish titled(String title, Optional<About> finishedOn) {
        return new Finish(
                title,
                Optional.empty(),
                finishedOn,
                Optional.empty(),
                "",
                "",
                List.of(),
                Optional.empty(),
                Sealing.NOT_SAID,
                List.of(),
                List.of(),
                "",
                Set.of());
    }
}
