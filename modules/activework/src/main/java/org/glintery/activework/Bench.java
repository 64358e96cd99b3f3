package org.glintery.activework;

import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.activework.RunningSitting;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.stash.Stash;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.glintery.api.workshop.Workshop;
import org.openide.util.NbBundle.Messages;

/**
 * Who lies on the bench. The stash is asked to change a standing, for a standing may bring drills with it; where there is
 * no stash, the piece alone is changed. Any thread.
 */
final class Bench {

    private final Workshop workshop;

    Bench(Workshop workshop) {
        this.workshop = workshop;
    }

    @Messages("Bench.noPiece=That piece is no longer in the workshop. Nothing was changed.")
    static <T> Result<T> noPiece() {
        return Result.refused("no-piece", Bundle.Bench_noPiece());
    }

    Result<ChangeSet> start(View view, UUID piece, About on) {
        return view.find(Piece.TYPE, piece)
                .map(stored -> start(view, stored, on))
                .orElseGet(Bench::noPiece);
    }

    Result<ChangeSet> rest(View view, UUID piece, About on) {
        return view.find(Piece.TYPE, piece)
                .map(stored -> rest(view, stored, on))
                .orElseGet(Bench::noPiece);
    }

    /** What brings a piece onto the bench that is still to be made; empty when there is nothing to do. */
    Optional<Result<ChangeSet>> comingOnto(View view, Stored<Piece> piece, About on) {
        return switch (piece.value().standing()) {
            case HOPED_FOR, ORDERED, SHELVED, RESTING -> Optional.of(stand(view, piece, Standing.ON_THE_BENCH, on));
            case ON_THE_BENCH, MADE, LET_GO -> Optional.empty();
        };
    }

    @Messages({
        "# {0} - title",
        "Bench.letRest=Let {0} rest",
        "# {0} - title",
        "Bench.putOnTheBench=Put {0} on the bench"
    })
    Result<ChangeSet> stand(View view, Stored<Piece> piece, Standing standing, About on) {
        Optional<Stash> stash = workshop.find(Stash.class);
        if (stash.isPresent()) {
            return stash.get().setStanding(view, piece.id(), standing, Optional.of(on));
        }
        String title = piece.value().title();
        String sentence =
                standing == Standing.RESTING ? Bundle.Bench_letRest(title) : Bundle.Bench_putOnTheBench(title);
        return Result.ok(ChangeSet.named(sentence)
                .replace(Piece.TYPE, piece, piece.value().with(standing, Optional.of(on)))
                .build());
    }

    @Messages({
        "# {0} - title",
        "Bench.onTheBench={0} is on the bench already. Nothing was changed.",
        "# {0} - title",
        "Bench.made={0} is made already. Nothing was changed. To make it again, choose ''Make it again'' on its Finish tab, or say ''piece again''."
    })
    private Result<ChangeSet> start(View view, Stored<Piece> piece, About on) {
        String title = piece.value().title();
        return switch (piece.value().standing()) {
            case ON_THE_BENCH -> Result.refused("on-the-bench", Bundle.Bench_onTheBench(title));
            case MADE -> Result.refused("already-made", Bundle.Bench_made(title));
            default -> standing(view, piece, Standing.ON_THE_BENCH, on);
        };
    }

    @Messages({
        "# {0} - title",
        "Bench.goesOn=A sitting at {0} still goes on. End it first. Nothing was changed.",
        "# {0} - title",
        "Bench.notOnTheBench={0} is not on the bench, so it can''t be laid aside. Nothing was changed."
    })
    private Result<ChangeSet> rest(View view, Stored<Piece> piece, About on) {
        String title = piece.value().title();
        if (view.find(RunningSitting.TYPE, piece.id()).isPresent()) {
            return Result.refused("goes-on", Bundle.Bench_goesOn(title));
        }
        return piece.value().standing() == Standing.ON_THE_BENCH
                ? standing(view, piece, Standing.RESTING, on)
                : Result.refused("not-on-the-bench", Bundle.Bench_notOnTheBench(title));
    }

    private Result<ChangeSet> standing(View view, Stored<Piece> piece, Standing standing, About on) {
        return NotYet.refusal(view, on)
                .<Result<ChangeSet>>map(Result::refused)
                .orElseGet(() -> stand(view, piece, standing, on));
    }
}
