package org.glintery.api.activework;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.Stable;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;

/** The bench. Methods compute from the view and change nothing: apply what they give. Any thread. */
@Stable
public interface ActiveWork {

    /** Puts a piece on the bench. */
    Result<ChangeSet> start(View view, UUID piece, About on);

    /** Lets a piece rest. */
    Result<ChangeSet> rest(View view, UUID piece, About on);

    /**
     * Records a sitting under a given id. Drills by symbol are booked from the piece's pockets and bags to its
     * canvas. A piece that is not on the bench comes onto it.
     */
    Result<ChangeSet> sit(View view, UUID id, Sitting sitting);

    Result<ChangeSet> editSitting(View view, UUID id, Sitting sitting);

    Result<ChangeSet> begin(View view, UUID piece, ZonedDateTime now);

    Result<ChangeSet> pause(View view, UUID piece, ZonedDateTime now);

    Result<ChangeSet> resume(View view, UUID piece, ZonedDateTime now);

    /** Ends the running sitting and records it. */
    Result<ChangeSet> end(View view, UUID piece, ZonedDateTime now, Laid laid, Optional<String> where, String note);

    /** Sittings of a piece, oldest first. */
    List<Stored<Sitting>> sittings(View view, UUID piece);

    Progress progress(View view, UUID piece);

    Forecast forecast(View view, UUID piece, LocalDate today);

    /**
     * Completes a piece: one change over stash, finishes and storage. Each legend line's remainder goes to the
     * canvas, reservations end, the finish is begun, what is left is ready to be kitted down.
     */
    Result<ChangeSet> complete(View view, Completion completion);

    Result<ChangeSet> ask(View view, UUID id, Question question);

    Result<ChangeSet> answer(View view, UUID question, Question.Answer answer);

    /** Open questions of all pieces, oldest first. */
    List<Stored<Question>> openQuestions(View view);
}
