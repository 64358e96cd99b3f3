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

    /** Puts a piece on the bench. Refused with {@code no-piece}, {@code on-the-bench} or {@code already-made}. */
    Result<ChangeSet> start(View view, UUID piece, About on);

    /**
     * Lets a piece rest. Refused with {@code no-piece}, {@code not-on-the-bench}, or {@code goes-on} while a sitting does.
     */
    Result<ChangeSet> rest(View view, UUID piece, About on);

    /**
     * Records a sitting under a given id. Drills by symbol are booked from the piece's pockets and bags to its
     * canvas. A piece that is not on the bench comes onto it. Refused with {@code no-piece},
     * {@code not-in-the-house}, {@code not-enough} for drills by symbol, and for what is told wrongly with {@code minutes}, {@code zone}, {@code percent},
     * {@code negative}, {@code nothing-laid}, {@code too-many}, {@code no-sections}, {@code future-day},
     * {@code unknown-symbol} or {@code ambiguous-symbol}. Warns where the sittings come to more than the whole.
     */
    Result<ChangeSet> sit(View view, UUID id, Sitting sitting);

    /**
     * Replaces a sitting, with what it booked. Refused with {@code no-sitting}, {@code other-piece}, or as {@link #sit} is.
     */
    Result<ChangeSet> editSitting(View view, UUID id, Sitting sitting);

    /**
     * Takes a sitting away; drills that it booked by symbol go back where they came from, as far as that is known. Refused with
     * {@code no-sitting}.
     */
    Result<ChangeSet> removeSitting(View view, UUID id);

    /**
     * Begins a sitting that goes on from now until {@link #end}; it outlives a restart. Refused with {@code no-piece},
     * {@code already-made}, or {@code goes-on} when one does already.
     */
    Result<ChangeSet> begin(View view, UUID piece, ZonedDateTime now);

    /** Stops the clock of the running sitting. Refused with {@code not-going-on} or {@code paused}. */
    Result<ChangeSet> pause(View view, UUID piece, ZonedDateTime now);

    /** Lets the clock go on after a pause. Refused with {@code not-going-on} or {@code not-paused}. */
    Result<ChangeSet> resume(View view, UUID piece, ZonedDateTime now);

    /** Ends the running sitting and records it. Refused with {@code not-going-on}, or as {@link #sit} is. */
    Result<ChangeSet> end(View view, UUID piece, ZonedDateTime now, Laid laid, Optional<String> where, String note);

    /** Sittings of a piece, oldest first. */
    List<Stored<Sitting>> sittings(View view, UUID piece);

    /** How far a piece is, by its sittings; nothing laid when it is not there. */
    Progress progress(View view, UUID piece);

    /**
     * When a piece will be done, by its sittings so far; where nothing can be said, its words say why.
     *
     * @param today from which the dates are counted
     */
    Forecast forecast(View view, UUID piece, LocalDate today);

    /**
     * Completes a piece: one change over stash, finishes and storage. Each legend line's remainder goes to the
     * canvas, reservations end, the finish is begun, what is left is ready to be kitted down. Refused with {@code no-piece},
     * {@code already-made}, {@code goes-on} while a sitting does, {@code bad-score}, or as a part refuses.
     */
    Result<ChangeSet> complete(View view, Completion completion);

    /** Writes down a doubt, open until it is answered. Refused with {@code no-piece}, {@code no-text} or {@code bad-pin}. */
    Result<ChangeSet> ask(View view, UUID id, Question question);

    /** Answers a question, once. Refused with {@code no-question}, {@code answered} or {@code no-reason}. */
    Result<ChangeSet> answer(View view, UUID question, Question.Answer answer);

    /** Open questions of all pieces, oldest first. */
    List<Stored<Question>> openQuestions(View view);
}
