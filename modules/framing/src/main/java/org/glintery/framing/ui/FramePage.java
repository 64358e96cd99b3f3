package org.glintery.framing.ui;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.framing.FrameDepth;
import org.glintery.api.framing.FrameFigures;
import org.glintery.api.framing.FramePlan;
import org.glintery.api.framing.FramePlan.Decision;
import org.glintery.api.framing.Framing;
import org.glintery.api.stash.Canvas;
import org.glintery.api.stash.Piece;
import org.glintery.api.storage.KeepingPlace;
import org.glintery.api.workshop.Picture;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.glintery.framing.OneWayQuestions;

/**
 * What the Frame tab shows. Made without Swing; immutable.
 *
 * @param drilled the drilled area, for the hint of what is taken when no artwork is told
 * @param figures absent while a number is missing; {@code missing} then says which
 * @param depth what the rebate has to take
 * @param settleFirst open questions that have to be settled before a one-way step
 */
record FramePage(
        FramePlan plan,
        Canvas drilled,
        Optional<FrameFigures> figures,
        FrameDepth depth,
        String missing,
        Optional<Hanging> hanging,
        List<String> settleFirst,
        List<Stored<KeepingPlace>> places) {

    static FramePage of(View view, Framing framing, UUID id) {
        Optional<Piece> piece = view.find(Piece.TYPE, id).map(Stored::value);
        FramePlan plan = PlanEdits.planOf(view, id);
        Result<FrameFigures> result = framing.figures(view, id, plan);
        Optional<FrameFigures> figures =
                result instanceof Result.Ok<FrameFigures> ok ? Optional.of(ok.value()) : Optional.empty();
        Optional<Picture> picture = piece.flatMap(p -> p.pictures().stream().findFirst());
        return new FramePage(
                plan,
                piece.map(Piece::canvas).orElse(Canvas.NOT_SAID),
                figures,
                framing.depth(view, id, plan),
                result instanceof Result.Refused<FrameFigures> no ? no.refusal().text() : "",
                figures.or(() -> asItIs(view, framing, id, plan)).map(f -> Hanging.of(plan, f, picture)),
                OneWayQuestions.of(view, id),
                view.all(KeepingPlace.TYPE));
    }

    /** The questions to settle before what is decided now; none while that can be taken back. */
    List<String> settleNow() {
        return OneWayQuestions.isOneWay(plan.decision()) ? settleFirst : List.of();
    }

    /** What is drawn while the frame lacks a number: the artwork alone. */
    private static Optional<FrameFigures> asItIs(View view, Framing framing, UUID id, FramePlan plan) {
        PlanCopy copy = new PlanCopy(plan);
        copy.decision = Decision.NOT_FRAMED;
        Result<FrameFigures> result = copy.plan().then(bare -> framing.figures(view, id, bare));
        return result instanceof Result.Ok<FrameFigures> ok ? Optional.of(ok.value()) : Optional.empty();
    }
}
