package org.glintery.demo;

import java.time.LocalDate;
import java.util.Optional;
import org.glintery.api.activework.Question;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;

/** Open questions, pinned where they are, and two that were answered. */
final class Doubts {
    private final Seeded seeded;
    private final ChangeSet.Builder change;

    Doubts(Seeded seeded, ChangeSet.Builder change) {
        this.seeded = seeded;
        this.change = change;
    }

    void ask(PieceInMaking piece) {
        switch (piece.told().title()) {
            case Plot.WINDOWS ->
                ask(
                        piece,
                        0.73,
                        0.66,
                        9,
                        true,
                        "This pane is not the shade of its fellow on the left. Change it?",
                        null);
            case Plot.BOARD -> {
                ask(
                        piece,
                        0.81,
                        0.44,
                        31,
                        false,
                        "Could the figures on the departures board be read if it were larger?",
                        null);
                ask(
                        piece,
                        0.26,
                        0.55,
                        26,
                        false,
                        "Is the hull too dark against the water?",
                        new Question.Answer(
                                false, "from two steps back it is right", About.on(Calendar.TODAY.minusDays(12))));
            }
            case Plot.WATERLINE ->
                ask(
                        piece,
                        0.38,
                        0.795,
                        97,
                        false,
                        "Would metallic drills show along the waterline, and are there enough that fit?",
                        null);
            case Plot.LIT ->
                ask(
                        piece,
                        0.30,
                        0.40,
                        55,
                        false,
                        "Pearl for the lit windows? These are round, and the pearl in the house is square.",
                        null);
            case Plot.LATEST ->
                ask(
                        piece,
                        0.52,
                        0.48,
                        5,
                        true,
                        "Seal it, or would that dull the ropes? Try a spare drill first.",
                        null);
            case Plot.FUNNEL ->
                ask(
                        piece,
                        0.26,
                        0.32,
                        230,
                        true,
                        "Two reds in the funnel?",
                        new Question.Answer(true, "the darker one stood out", About.on(LocalDate.of(2026, 4, 9))));
            default -> {}
        }
    }

    private void ask(
            PieceInMaking piece, double x, double y, int daysAgo, boolean first, String text, Question.Answer answer) {
        Optional<Question.Pin> pin = piece.picture().map(blob -> new Question.Pin(blob.hash(), x, y));
        About asked = About.on(Calendar.TODAY.minusDays(daysAgo));
        change.create(
                Question.TYPE,
                seeded.id(),
                new Question(piece.id(), text, pin, asked, first, Optional.ofNullable(answer)));
    }
}
