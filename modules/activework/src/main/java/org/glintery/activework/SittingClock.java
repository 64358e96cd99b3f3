package org.glintery.activework;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.BiFunction;
import org.glintery.api.Result;
import org.glintery.api.activework.Laid;
import org.glintery.api.activework.RunningSitting;
import org.glintery.api.activework.Sitting;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Precondition;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/** The sitting that goes on at a piece: begun, paused, gone on with, ended. Any thread. */
final class SittingClock {

    private final View view;
    private final Bench bench;
    private final UUID id;
    private final Optional<Stored<Piece>> piece;
    private final Optional<Stored<RunningSitting>> running;

    SittingClock(View view, Bench bench, UUID piece) {
        this.view = view;
        this.bench = bench;
        this.id = piece;
        this.piece = view.find(Piece.TYPE, piece);
        this.running = view.find(RunningSitting.TYPE, piece);
    }

    @Messages({
        "# {0} - title",
        "SittingClock.begin=Begin a sitting at {0}",
        "# {0} - title",
        "SittingClock.goesOn=A sitting at {0} goes on already. Nothing was changed.",
        "# {0} - title",
        "SittingClock.made={0} is made already. Nothing was changed."
    })
    Result<ChangeSet> begin(ZonedDateTime now) {
        if (piece.isEmpty()) {
            return Bench.noPiece();
        }
        if (running.isPresent()) {
            return Result.refused("goes-on", Bundle.SittingClock_goesOn(title()));
        }
        if (piece.get().value().standing() == Standing.MADE) {
            return Result.refused("already-made", Bundle.SittingClock_made(title()));
        }
        ChangeSet begun = ChangeSet.named(Bundle.SittingClock_begin(title()))
                .create(RunningSitting.TYPE, id, WorkingTime.beginning(now).kept())
                .build();
        return bench.comingOnto(view, piece.get(), About.on(now.toLocalDate()))
                .map(coming -> coming.then(change -> Result.ok(begun.join(change))))
                .orElseGet(() -> Result.ok(begun));
    }

    @Messages({
        "# {0} - title",
        "SittingClock.pause=Pause the sitting at {0}",
        "SittingClock.pausedAlready=This sitting is paused already. Nothing was changed."
    })
    Result<ChangeSet> pause(ZonedDateTime now) {
        return going((stored, time) -> time.pausedSince().isPresent()
                ? Result.refused("paused", Bundle.SittingClock_pausedAlready())
                : Result.ok(ChangeSet.named(Bundle.SittingClock_pause(title()))
                        .replace(
                                RunningSitting.TYPE,
                                stored,
                                time.paused(now.toInstant()).kept())
                        .build()));
    }

    @Messages({
        "# {0} - title",
        "SittingClock.resume=Go on with the sitting at {0}",
        "SittingClock.notPaused=This sitting is not paused. Nothing was changed."
    })
    Result<ChangeSet> resume(ZonedDateTime now) {
        return going((stored, time) -> time.pausedSince().isEmpty()
                ? Result.refused("not-paused", Bundle.SittingClock_notPaused())
                : Result.ok(ChangeSet.named(Bundle.SittingClock_resume(title()))
                        .replace(
                                RunningSitting.TYPE,
                                stored,
                                time.resumed(now.toInstant()).kept())
                        .build()));
    }

    Result<ChangeSet> end(ZonedDateTime now, Laid laid, Optional<String> where, String note) {
        return going((stored, time) -> ended(time, now, laid, where, note)
                .then(sitting -> new SittingRecording(view, bench).record(UUID.randomUUID(), sitting))
                .then(recorded -> Result.ok(recorded.join(ChangeSet.named(recorded.sentence())
                        .require(new Precondition.DocumentAt(RunningSitting.TYPE.ref(id), stored.version()))
                        .remove(RunningSitting.TYPE.ref(id))
                        .build()))));
    }

    /** A sitting that was forgotten for days is kept without its minutes: nobody works that long. */
    @Messages(
            "SittingClock.forgotten=This sitting went on for more than a day, so its minutes were left out. Correct it if you know them.")
    private Result<Sitting> ended(WorkingTime time, ZonedDateTime now, Laid laid, Optional<String> where, String note) {
        int worked = time.workedMinutesUntil(now.toInstant());
        int paused = time.pausedMinutesUntil(now.toInstant());
        boolean forgotten = Math.max(worked, paused) > SittingCheck.MOST_MINUTES;
        ZoneId zone = time.zone() instanceof ZoneOffset ? now.getZone() : time.zone();
        LocalDateTime started = LocalDateTime.ofInstant(time.start(), zone);
        Sitting sitting = new Sitting(
                id,
                About.on(started.toLocalDate()),
                Optional.of(started),
                Optional.of(zone.getId()),
                forgotten ? Optional.empty() : Optional.of(worked),
                forgotten ? 0 : paused,
                laid,
                where,
                note);
        return Result.ok(sitting, forgotten ? List.of(Bundle.SittingClock_forgotten()) : List.of());
    }

    @Messages("SittingClock.none=No sitting goes on at this piece. Nothing was changed.")
    private Result<ChangeSet> going(BiFunction<Stored<RunningSitting>, WorkingTime, Result<ChangeSet>> next) {
        return running.map(stored -> next.apply(stored, WorkingTime.of(stored.value())))
                .orElseGet(() -> Result.refused("not-going-on", Bundle.SittingClock_none()));
    }

    private String title() {
        return piece.map(p -> p.value().title()).orElse("");
    }
}
