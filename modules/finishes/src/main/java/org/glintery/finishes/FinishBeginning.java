package org.glintery.finishes;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.glintery.api.Result;
import org.glintery.api.activework.Completion;
import org.glintery.api.activework.Sitting;
import org.glintery.api.finishes.Finish;
import org.glintery.api.finishes.Finish.Field;
import org.glintery.api.stash.Piece;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/** Begins the record of a piece that is being completed: what was told is in it, the rest is left for later. */
final class FinishBeginning {

    private final View view;
    private final Completion completion;

    FinishBeginning(View view, Completion completion) {
        this.view = view;
        this.completion = completion;
    }

    @Messages({
        "FinishBeginning.noPiece=That piece is no longer in the workshop. Nothing was changed.",
        "# {0} - title",
        "FinishBeginning.begin=Begin the finish of {0}"
    })
    Result<ChangeSet> begin() {
        Optional<Stored<Piece>> piece = view.find(Piece.TYPE, completion.piece());
        if (piece.isEmpty()) {
            return Result.refused("no-piece", Bundle.FinishBeginning_noPiece());
        }
        String title = piece.get().value().title();
        ChangeSet.Builder change = ChangeSet.named(Bundle.FinishBeginning_begin(title));
        return FinishCheck.score(completion.score()).then(score -> {
            view.find(Finish.TYPE, completion.piece())
                    .ifPresentOrElse(
                            old -> change.replace(
                                    Finish.TYPE,
                                    old,
                                    told(old.value(), old.value().later())),
                            () -> change.create(
                                    Finish.TYPE,
                                    completion.piece(),
                                    told(Finish.titled(title, Optional.empty()), EnumSet.allOf(Field.class))));
            return Result.ok(change.build(), FinishCheck.notYet(view, Optional.of(completion.on())));
        });
    }

    /** What was written before stays, save for the day, which is known now. */
    private Finish told(Finish finish, Set<Field> later) {
        Finish told = finish.withCompletion(
                finish.startedOn().or(this::firstSitting),
                Optional.of(completion.on()),
                completion.score().or(finish::score),
                comments(finish.comments(), completion.comments()));
        return FinishFields.leaving(told, later);
    }

    private static String comments(String before, String now) {
        return before.isBlank() || now.isBlank() ? before + now : before + "\n" + now;
    }

    private Optional<About> firstSitting() {
        List<About> days = view.all(Sitting.TYPE).stream()
                .map(Stored::value)
                .filter(sitting -> sitting.piece().equals(completion.piece()))
                .map(Sitting::day)
                .filter(day -> day.earliest().isPresent())
                .toList();
        return days.stream().min(About::compareTo);
    }
}
