package org.glintery.framing.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.framing.FramePlan;
import org.glintery.api.framing.FramePlan.Decision;
import org.glintery.api.framing.Framing;
import org.glintery.api.framing.Moulding;
import org.glintery.api.stash.Piece;
import org.glintery.api.workshop.Picture;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;

/**
 * Ways for one piece to hang, side by side. Made without Swing; immutable.
 *
 * @param decided what was decided already
 * @param missing what has to be told before anything can be drawn; else blank
 */
record HangingOptions(UUID piece, Decision decided, List<Option> options, String missing) {

    /** One way to hang, with the plan that would be recorded. */
    record Option(FramePlan plan, Hanging hanging) {}

    private static final List<Decision> COMPARED =
            List.of(Decision.NOT_FRAMED, Decision.FRAMED, Decision.STRETCHED, Decision.HANGER);

    /** @param tried a moulding to try; where none is, that of the plan is drawn */
    static HangingOptions of(View view, Framing framing, UUID id, Optional<Moulding> tried) {
        Optional<Piece> piece = view.find(Piece.TYPE, id).map(Stored::value);
        FramePlan before = PlanEdits.planOf(view, id);
        Optional<Picture> picture = piece.flatMap(p -> p.pictures().stream().findFirst());
        List<Option> options = new ArrayList<>();
        String missing = "";
        for (Decision decision : COMPARED) {
            PlanCopy copy = new PlanCopy(before);
            copy.decision = decision;
            tried.ifPresent(moulding -> {
                copy.mouldingName = moulding.name();
                copy.mouldingWidthMm = Optional.of(moulding.widthMm());
                copy.lipMm = Optional.of(moulding.lipMm());
                copy.rebateMm = Optional.of(moulding.rebateDepthMm());
            });
            Result<Option> option = copy.plan()
                    .then(plan -> framing.figures(view, id, plan)
                            .then(figures -> Result.ok(new Option(plan, Hanging.of(plan, figures, picture)))));
            if (option instanceof Result.Ok<Option> ok) {
                options.add(ok.value());
            } else if (missing.isEmpty()) {
                missing = ((Result.Refused<Option>) option).refusal().text();
            }
        }
        return new HangingOptions(id, before.decision(), List.copyOf(options), missing);
    }

    /** The widest of them, in mm, so that all are drawn to one scale. */
    double wallWidthMm() {
        return options.stream().mapToDouble(o -> o.hanging().outer().getWidth()).max().orElse(1);
    }

    /** The highest of them, in mm. */
    double wallHeightMm() {
        return options.stream().mapToDouble(o -> o.hanging().outer().getHeight()).max().orElse(1);
    }
}
