package org.glintery.finishes.ui;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.activework.Question;
import org.glintery.api.finishes.Finish;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.time.About;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;

/**
 * What the Finish tab shows. Made without Swing; immutable.
 *
 * @param finish absent while nothing is written
 * @param title of the piece
 * @param madeOn when the piece was made, as far as is known
 * @param settleFirst open questions that have to be settled before sealing
 */
record FinishPage(
        Optional<Finish> finish, String title, boolean made, Optional<About> madeOn, List<String> settleFirst) {

    static FinishPage of(View view, UUID id) {
        Optional<Piece> piece = view.find(Piece.TYPE, id).map(Stored::value);
        boolean made = piece.filter(p -> p.standing() == Standing.MADE).isPresent();
        return new FinishPage(
                view.find(Finish.TYPE, id).map(Stored::value),
                piece.map(Piece::title).orElse(""),
                made,
                piece.filter(p -> made).flatMap(Piece::standingSince),
                settleFirst(view, id));
    }

    /** The record, or one that begins with what is known of the piece. */
    Finish orNew() {
        return finish.orElseGet(() -> Finish.titled(title, madeOn));
    }

    private static List<String> settleFirst(View view, UUID id) {
        return view.all(Question.TYPE).stream()
                .map(Stored::value)
                .filter(q ->
                        q.piece().equals(id) && q.settleFirst() && q.answer().isEmpty())
                .map(Question::text)
                .toList();
    }
}
