package org.glintery.demo;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.glintery.api.finishes.Finish;
import org.glintery.api.finishes.Finish.Field;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Picture;

/** Fourteen finishes: three with only a title and about when, ten written up, and the latest left for later. */
final class MadePieces {
    private final ChangeSet.Builder change;

    MadePieces(ChangeSet.Builder change) {
        this.change = change;
    }

    /** The oldest are remembered only roughly. Empty when nothing is known. */
    static Optional<About> finishedOn(int made) {
        return switch (made) {
            case 0 -> Optional.empty();
            case 1 -> About.edtf("2022-XX-XX");
            case 2 -> About.edtf("2023-23");
            case 5, 9 -> About.edtf(Calendar.finishedOn(made).toString().substring(0, 7) + "~");
            default -> Optional.of(About.on(Calendar.finishedOn(made)));
        };
    }

    void write(PieceInMaking piece) {
        String title = piece.told().title();
        Finish finish = FinishNote.of(title)
                .map(note -> written(piece, note))
                .orElseGet(
                        () -> piece.grid().isPresent() ? begun(piece) : Finish.titled(title, finishedOn(piece.made())));
        change.create(Finish.TYPE, piece.id(), finish);
    }

    private static Finish written(PieceInMaking piece, FinishNote note) {
        List<Picture> photos = piece.picture()
                .map(blob -> List.of(Shelving.picture(blob, "As it came off the table")))
                .orElse(List.of());
        return new Finish(
                piece.told().title(),
                Optional.of(About.on(Calendar.startedOn(piece.made()))),
                finishedOn(piece.made()),
                note.score(),
                note.making(),
                note.altered(),
                note.toolList(),
                Optional.of(note.where()),
                note.sealing(),
                photos,
                List.of(),
                note.comments(),
                note.score().isEmpty() ? Set.of(Field.SCORE) : Set.of());
    }

    /** Completed the other day: nothing but the dates is told. */
    private static Finish begun(PieceInMaking piece) {
        return new Finish(
                piece.told().title(),
                Optional.of(About.on(Calendar.startedOn(piece.made()))),
                finishedOn(piece.made()),
                Optional.empty(),
                "",
                "",
                List.of(),
                Optional.of("kitchen table"),
                Finish.Sealing.NOT_SAID,
                List.of(),
                List.of(),
                "",
                Set.of(Field.SCORE, Field.MAKING, Field.PICTURE, Field.COMMENTS, Field.SEALING));
    }
}
