package org.glintery.activework;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.activework.ActiveWork;
import org.glintery.api.activework.Completion;
import org.glintery.api.activework.Forecast;
import org.glintery.api.activework.Laid;
import org.glintery.api.activework.Progress;
import org.glintery.api.activework.Question;
import org.glintery.api.activework.Sitting;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.glintery.api.workshop.Workshop;

/** The bench, computed from views; of the workshop only the other features are asked for. Any thread. */
final class ComputedActiveWork implements ActiveWork {

    private final Workshop workshop;
    private final Bench bench;

    ComputedActiveWork(Workshop workshop) {
        this.workshop = workshop;
        this.bench = new Bench(workshop);
    }

    @Override
    public Result<ChangeSet> start(View view, UUID piece, About on) {
        return bench.start(view, piece, on);
    }

    @Override
    public Result<ChangeSet> rest(View view, UUID piece, About on) {
        return bench.rest(view, piece, on);
    }

    @Override
    public Result<ChangeSet> sit(View view, UUID id, Sitting sitting) {
        return new SittingRecording(view, bench).record(id, sitting);
    }

    @Override
    public Result<ChangeSet> editSitting(View view, UUID id, Sitting sitting) {
        return new SittingRecording(view, bench).edit(id, sitting);
    }

    @Override
    public Result<ChangeSet> removeSitting(View view, UUID id) {
        return new SittingRecording(view, bench).remove(id);
    }

    @Override
    public Result<ChangeSet> begin(View view, UUID piece, ZonedDateTime now) {
        return new SittingClock(view, bench, piece).begin(now);
    }

    @Override
    public Result<ChangeSet> pause(View view, UUID piece, ZonedDateTime now) {
        return new SittingClock(view, bench, piece).pause(now);
    }

    @Override
    public Result<ChangeSet> resume(View view, UUID piece, ZonedDateTime now) {
        return new SittingClock(view, bench, piece).resume(now);
    }

    @Override
    public Result<ChangeSet> end(
            View view, UUID piece, ZonedDateTime now, Laid laid, Optional<String> where, String note) {
        return new SittingClock(view, bench, piece).end(now, laid, where, note);
    }

    @Override
    public List<Stored<Sitting>> sittings(View view, UUID piece) {
        return PieceSittings.of(view, piece);
    }

    @Override
    public Progress progress(View view, UUID piece) {
        return new PieceProgress(view, piece).progress();
    }

    @Override
    public Forecast forecast(View view, UUID piece, LocalDate today) {
        return PieceForecast.of(view, piece, today);
    }

    @Override
    public Result<ChangeSet> complete(View view, Completion completion) {
        return new Completing(workshop).complete(view, completion);
    }

    @Override
    public Result<ChangeSet> ask(View view, UUID id, Question question) {
        return new Questions(view).ask(id, question);
    }

    @Override
    public Result<ChangeSet> answer(View view, UUID question, Question.Answer answer) {
        return new Questions(view).answer(question, answer);
    }

    @Override
    public List<Stored<Question>> openQuestions(View view) {
        return new Questions(view).open();
    }
}
