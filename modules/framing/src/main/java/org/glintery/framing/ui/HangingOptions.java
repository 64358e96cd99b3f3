package org.glintery.framing.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.framing.FrameDepth;
import org.glintery.api.framing.FramePlan;
import org.glintery.api.framing.FramePlan.Decision;
import org.glintery.api.framing.Framing;
import org.glintery.api.framing.Moulding;
import org.glintery.api.stash.Piece;
import org.glintery.api.workshop.Picture;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.glintery.framing.OneWayQuestions;

/**
 * Ways for one piece to hang, side by side. Made without Swing; immutable.
 *
 * @param decided what was decided already
 * @param example whether the frame is drawn with a moulding that nobody told
 * @param missing what has to be told before anything can be drawn; else blank
 * @param settleFirst open questions that have to be settled before a one-way step
 */
record HangingOptions(
        UUID piece, Decision decided, List<Option> options, boolean example, String missing, List<String> settleFirst) {

    /** A plain moulding to see a frame by, while none is told. */
    static final Moulding EXAMPLE = new Moulding("", 20, 5, 15);

    /** One way to hang, with the plan that would be recorded: an example is drawn but not recorded. */
    record Option(FramePlan plan, Hanging hanging, FrameDepth depth) {}

    private static final List<Decision> COMPARED = List.of(
            Decision.NOT_FRAMED,
            Decision.FRAMED,
            Decision.STRETCHED,
            Decision.ON_BOARD,
            Decision.HANGER,
            Decision.SLEEVE);

    /** @param tried a moulding to try; where none is, that of the plan is drawn, else an example */
    static HangingOptions of(View view, Framing framing, UUID id, Optional<Moulding> tried) {
        Optional<Piece> piece = view.find(Piece.TYPE, id).map(Stored::value);
        FramePlan before = PlanEdits.planOf(view, id);
        Optional<Picture> picture = piece.flatMap(p -> p.pictures().stream().findFirst());
        boolean example = tried.isEmpty() && before.moulding().isEmpty();
        List<Option> options = new ArrayList<>();
        String missing = "";
        for (Decision decision : COMPARED) {
            FramePlan wanted = before.with(decision, tried.or(before::moulding));
            FramePlan drawn = example ? before.with(decision, Optional.of(EXAMPLE)) : wanted;
            Result<Option> option = framing.figures(view, id, drawn)
                    .then(figures -> Result.ok(
                            new Option(wanted, Hanging.of(drawn, figures, picture), framing.depth(view, id, wanted))));
            if (option instanceof Result.Ok<Option> ok) {
                options.add(ok.value());
            } else {
                missing = ((Result.Refused<Option>) option).refusal().text();
            }
        }
        return new HangingOptions(
                id, before.decision(), List.copyOf(options), example, missing, OneWayQuestions.of(view, id));
    }

    /** The widest of them, in mm, so that all are drawn to one scale. */
    double wallWidthMm() {
        return options.stream()
                .mapToDouble(o -> o.hanging().outer().getWidth())
                .max()
                .orElse(1);
    }

    /** The highest of them, in mm. */
    double wallHeightMm() {
        return options.stream()
                .mapToDouble(o -> o.hanging().outer().getHeight())
                .max()
                .orElse(1);
    }
}
