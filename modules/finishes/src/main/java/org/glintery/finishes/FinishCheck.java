package org.glintery.finishes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.glintery.api.Result;
import org.glintery.api.finishes.Finish;
import org.glintery.api.time.About;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.Picture;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/** What a record must hold to be kept: a title, and nothing that can not be. Pure; any thread. */
final class FinishCheck {

    private static final int LEAST_SCORE = 1;
    private static final int MOST_SCORE = 5;

    private FinishCheck() {}

    @Messages({
        "FinishCheck.noTitle=A finish needs a title. Nothing was changed.",
        "FinishCheck.noPicture=A picture of this finish is missing. Nothing was changed. Add the picture again.",
        "FinishCheck.startsAfterEnd=The finish was begun after it was finished, by its dates. It was kept as it is."
    })
    static Result<Finish> of(View view, Finish finish, List<Blob> pictures) {
        if (finish.title().isBlank()) {
            return Result.refused("no-title", Bundle.FinishCheck_noTitle());
        }
        if (!Stream.concat(finish.photos().stream(), finish.sketches().stream())
                .allMatch(picture -> isThere(view, picture, pictures))) {
            return Result.refused("no-picture", Bundle.FinishCheck_noPicture());
        }
        List<String> warnings = new ArrayList<>(notYet(view, finish.finishedOn()));
        if (startsAfterEnd(finish)) {
            warnings.add(Bundle.FinishCheck_startsAfterEnd());
        }
        return score(finish.score()).then(score -> Result.ok(finish, warnings));
    }

    /** A warning where the day has not been yet. */
    @Messages({
        "# {0} - when",
        "FinishCheck.notYet=It is said to be finished {0}, which has not been yet. The date was kept. Correct it if it is wrong."
    })
    static List<String> notYet(View view, Optional<About> finishedOn) {
        return finishedOn
                .filter(on ->
                        on.earliest().filter(day -> day.isAfter(view.day())).isPresent())
                .map(on -> List.of(Bundle.FinishCheck_notYet(on.words())))
                .orElse(List.of());
    }

    @Messages("FinishCheck.score=A score is a whole number from 1 to 5, or none. Nothing was changed.")
    static Result<Optional<Integer>> score(Optional<Integer> score) {
        return score.filter(s -> s < LEAST_SCORE || s > MOST_SCORE).isPresent()
                ? Result.refused("bad-score", Bundle.FinishCheck_score())
                : Result.ok(score);
    }

    private static boolean isThere(View view, Picture picture, List<Blob> pictures) {
        return view.blobs().containsKey(picture.hash())
                || pictures.stream().anyMatch(blob -> blob.hash().equals(picture.hash()));
    }

    private static boolean startsAfterEnd(Finish finish) {
        Optional<LocalDate> start = finish.startedOn().flatMap(About::earliest);
        Optional<LocalDate> end = finish.finishedOn().flatMap(About::latest);
        return start.isPresent() && end.isPresent() && start.get().isAfter(end.get());
    }
}
