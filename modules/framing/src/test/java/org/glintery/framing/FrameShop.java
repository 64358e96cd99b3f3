package org.glintery.framing;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.activework.Question;
import org.glintery.api.framing.FramePlan;
import org.glintery.api.framing.Framing;
import org.glintery.api.stash.Canvas;
import org.glintery.api.stash.Coverage;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Workshop;
import org.glintery.testkit.ShopInFolder;

/** A real workshop in a folder, with the steps that the tests of framing share. */
public final class FrameShop extends ShopInFolder {

    public static final double MM_AN_INCH = 25.4;

    private final Framing framing;

    private FrameShop(Workshop workshop) {
        super(workshop);
        this.framing = workshop.find(Framing.class).orElseThrow();
    }

    public static FrameShop at(Path folder) {
        return new FrameShop(made(folder));
    }

    public Framing framing() {
        return framing;
    }

    /** A made piece of a drilled size. */
    public UUID made(String title, double widthMm, double heightMm) {
        return piece(title, Standing.MADE, Canvas.drilled(widthMm, heightMm));
    }

    public UUID piece(String title, Standing standing, Canvas canvas) {
        UUID id = UUID.randomUUID();
        Piece piece = new Piece(
                title,
                Optional.empty(),
                Optional.empty(),
                standing,
                Optional.empty(),
                Coverage.FULL,
                Optional.empty(),
                canvas,
                Optional.empty(),
                List.of(),
                Optional.empty(),
                "");
        apply(Result.ok(
                ChangeSet.named("Add " + title).create(Piece.TYPE, id, piece).build()));
        return id;
    }

    public void ask(UUID piece, String text, boolean settleFirst, Optional<Question.Answer> answer) {
        Question question =
                new Question(piece, text, Optional.empty(), About.on(LocalDate.of(2025, 5, 2)), settleFirst, answer);
        apply(Result.ok(ChangeSet.named("Ask")
                .create(Question.TYPE, UUID.randomUUID(), question)
                .build()));
    }

    public FramePlan plan(UUID piece) {
        return view().find(FramePlan.TYPE, piece).orElseThrow().value();
    }
}
