package org.glintery.demo;

import java.time.LocalDate;
import java.util.Optional;
import org.glintery.api.activework.Question;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;

/** Open questions, pinned where they can be, and one that was answered. */
final class Doubts {
    private final Seeded seeded;
    private final ChangeSet.Builder change;

    Doubts(Seeded seeded, ChangeSet.Builder change) {
        this.seeded = seeded;
        this.change = change;
    }

    void ask(PieceInMaking piece) {
        switch (piece.told().title()) {
            case Told.WINDOWS -> open(piece, 0.73, 0.66, true, "One pane of this pair is in the wrong shade. Change it?");
            case Told.BOARD -> open(piece, 0.82, 0.50, false, "Can the figures on the departures board be read from the sofa?");
            case Told.WATERLINE -> open(piece, 0.32, 0.84, false, "Would metallic drills show along the waterline?");
            case Told.LIT -> open(piece, 0.61, 0.40, false, "Pearl for the lit windows? Only square pearl is in the house, and these are round.");
            case "The noon ferry" -> change.create(
                    Question.TYPE,
                    seeded.id(),
                    new Question(
                            piece.id(),
                            "Is the funnel too dark?",
                            pin(piece, 0.36, 0.36),
                            About.on(LocalDate.of(2026, 3, 2)),
                            true,
                            Optional.of(new Question.Answer(
                                    false, "from two steps back it is right", About.on(LocalDate.of(2026, 4, 9))))));
            default -> {}
        }
    }

    private void open(PieceInMaking piece, double x, double y, boolean first, String text) {
        About asked = About.on(DemoFilling.TODAY.minusDays(seeded.between(6, 60)));
        change.create(
                Question.TYPE,
                seeded.id(),
                new Question(piece.id(), text, pin(piece, x, y), asked, first, Optional.empty()));
    }

    private static Optional<Question.Pin> pin(PieceInMaking piece, double x, double y) {
        return piece.pictures().stream().findFirst().map(blob -> new Question.Pin(blob.hash(), x, y));
    }
}
