package org.glintery.finishes;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.finishes.Finish;
import org.glintery.api.finishes.Finish.Field;
import org.glintery.api.finishes.Finishes;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Workshop;
import org.glintery.testkit.ShopInFolder;

/** A real workshop in a folder, with the steps that the tests of finishes share. */
public final class FinishShop extends ShopInFolder {

    public static final About MAY = About.on(LocalDate.of(2025, 5, 2));

    private final Finishes finishes;

    private FinishShop(Workshop workshop) {
        super(workshop);
        this.finishes = workshop.find(Finishes.class).orElseThrow();
    }

    public static FinishShop at(Path folder) {
        return new FinishShop(made(folder));
    }

    public Finishes finishes() {
        return finishes;
    }

    public static About about(String words) {
        return About.said(words, LocalDate.of(2025, 5, 2)).orElseThrow();
    }

    public UUID piece(String title, Standing standing) {
        UUID id = UUID.randomUUID();
        apply(Result.ok(ChangeSet.named("Add " + title)
                .create(Piece.TYPE, id, Piece.titled(title, standing))
                .build()));
        return id;
    }

    /** Writes a finish of a title and a date alone. */
    public UUID write(String title, Optional<About> finishedOn) {
        UUID id = UUID.randomUUID();
        apply(finishes.write(view(), id, Finish.titled(title, finishedOn), List.of()));
        return id;
    }

    public Finish finish(UUID piece) {
        return view().find(Finish.TYPE, piece).orElseThrow().value();
    }

    public Piece pieceOf(UUID id) {
        return view().find(Piece.TYPE, id).orElseThrow().value();
    }

    public static Finish scored(String title, int score) {
        Finish plain = Finish.titled(title, Optional.empty());
        return new Finish(
                title,
                plain.startedOn(),
                plain.finishedOn(),
                Optional.of(score),
                "",
                "",
                List.of(),
                plain.where(),
                plain.sealing(),
                List.of(),
                List.of(),
                "",
                Set.of());
    }

    public static Finish leavingAll(String title) {
        return FinishFields.leaving(Finish.titled(title, Optional.empty()), EnumSet.allOf(Field.class));
    }
}
