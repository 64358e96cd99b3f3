package org.glintery.activework;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.activework.Completion;
import org.glintery.api.activework.CompletionPart;
import org.glintery.api.activework.RunningSitting;
import org.glintery.api.finishes.Finishes;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.stash.Stash;
import org.glintery.api.storage.KitUp;
import org.glintery.api.storage.Storage;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Reservation;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.glintery.api.workshop.Workshop;
import org.openide.util.NbBundle.Messages;

/** Completes a piece: what finishes, storage and stash each contribute becomes one change. Any thread. */
final class Completing {

    private static final int LEAST_SCORE = 1;
    private static final int MOST_SCORE = 5;

    private final Workshop workshop;

    Completing(Workshop workshop) {
        this.workshop = workshop;
    }

    @Messages({
        "# {0} - title",
        "Completing.complete=Complete {0}",
        "# {0} - title",
        "Completing.made={0} is made already. Nothing was changed.",
        "# {0} - title",
        "Completing.goesOn=A sitting at {0} still goes on. End it first. Nothing was changed.",
        "Completing.score=A score is a whole number from 1 to 5, or none. Nothing was changed.",
        "# {0} - title",
        "Completing.neverBegun={0} was never on the bench and no sitting at it is recorded. It was completed all the same. Undo takes that back."
    })
    Result<ChangeSet> complete(View view, Completion completion) {
        Optional<Stored<Piece>> piece = view.find(Piece.TYPE, completion.piece());
        if (piece.isEmpty()) {
            return Bench.noPiece();
        }
        String title = piece.get().value().title();
        if (piece.get().value().standing() == Standing.MADE) {
            return Result.refused("already-made", Bundle.Completing_made(title));
        }
        if (view.find(RunningSitting.TYPE, completion.piece()).isPresent()) {
            return Result.refused("goes-on", Bundle.Completing_goesOn(title));
        }
        if (completion.score().filter(s -> s < LEAST_SCORE || s > MOST_SCORE).isPresent()) {
            return Result.refused("bad-score", Bundle.Completing_score());
        }
        Optional<Refusal> notYet = NotYet.refusal(view, completion.on());
        if (notYet.isPresent()) {
            return Result.refused(notYet.get());
        }
        Optional<Refusal> lacking = lacking(view, title, completion);
        if (lacking.isPresent()) {
            return Result.refused(lacking.get());
        }
        Result<ChangeSet> whole = Result.ok(
                ChangeSet.named(Bundle.Completing_complete(title)).build(),
                wasBegun(view, piece.get()) ? List.of() : List.of(Bundle.Completing_neverBegun(title)));
        for (CompletionPart part : parts(piece.get())) {
            whole = whole.then(change -> part.completing(view, completion).then(more -> Result.ok(change.join(more))));
        }
        return whole;
    }

    private static boolean wasBegun(View view, Stored<Piece> piece) {
        return switch (piece.value().standing()) {
            case HOPED_FOR, ORDERED, SHELVED ->
                !PieceSittings.of(view, piece.id()).isEmpty();
            case ON_THE_BENCH, RESTING, MADE, LET_GO -> true;
        };
    }

    /** What would be lost, or stay booked wrongly for good, while the feature that keeps it is switched off. */
    @Messages({
        "# {0} - title",
        "Completing.needsStash=The drills of {0} are kept, and kits and pieces, which book the last of them, are switched off. "
                + "Switch them on to complete it. Nothing was changed.",
        "Completing.needsFinishes=A score and what there is to say belong into the finish, and finishes are switched off. "
                + "Leave them out, or switch finishes on. Nothing was changed."
    })
    private Optional<Refusal> lacking(View view, String title, Completion completion) {
        if (workshop.find(Stash.class).isEmpty() && drillsAreKept(view, completion.piece())) {
            return Optional.of(new Refusal("needs-stash", Bundle.Completing_needsStash(title)));
        }
        boolean writes =
                completion.score().isPresent() || !completion.comments().isBlank();
        return writes && workshop.find(Finishes.class).isEmpty()
                ? Optional.of(new Refusal("needs-finishes", Bundle.Completing_needsFinishes()))
                : Optional.empty();
    }

    private static boolean drillsAreKept(View view, UUID piece) {
        return KitUp.of(view, piece).isPresent()
                || !view.contents(new Spot.OnCanvas(piece)).isEmpty()
                || view.all(Reservation.TYPE).stream()
                        .map(Stored::value)
                        .anyMatch(held -> held.purpose().equals(Reservation.FOR_PIECE)
                                && held.forId().equals(piece));
    }

    /** A feature that is switched off contributes nothing; the standing, which the stash keeps, is then set here. */
    private List<CompletionPart> parts(Stored<Piece> piece) {
        Optional<Stash> stash = workshop.find(Stash.class);
        CompletionPart standing = stash.isPresent() ? stash.get() : (view, completion) -> madeAlone(piece, completion);
        return Stream.of(
                        workshop.find(Finishes.class).stream(),
                        workshop.find(Storage.class).stream(),
                        Stream.of(standing))
                .<CompletionPart>flatMap(part -> part)
                .toList();
    }

    private static Result<ChangeSet> madeAlone(Stored<Piece> piece, Completion completion) {
        return Result.ok(ChangeSet.named(
                        Bundle.Completing_complete(piece.value().title()))
                .replace(Piece.TYPE, piece, piece.value().with(Standing.MADE, Optional.of(completion.on())))
                .build());
    }
}
