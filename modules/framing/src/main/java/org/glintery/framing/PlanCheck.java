package org.glintery.framing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.glintery.api.Result;
import org.glintery.api.framing.FramePlan;
import org.glintery.api.framing.Moulding;
import org.glintery.api.storage.KeepingPlace;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/** Numbers of a frame plan that can not be. What is not told is not asked for here. Pure; any thread. */
final class PlanCheck {

    /** Longer is a typing error: the largest canvases are a few metres. */
    private static final double MOST_MM = 100_000;

    private PlanCheck() {}

    @Messages({
        "PlanCheck.size=The size of the artwork has to be above 0 and at most 100 metres. Nothing was changed.",
        "PlanCheck.length=Moulding, lip, rebate, play and saw cut can not be below 0 or over 100 metres. Nothing was changed.",
        "PlanCheck.lip=The lip is wider than its moulding. Nothing was changed. Measure the face from the outer edge to the sight edge.",
        "PlanCheck.place=That keeping place is no longer in the workshop. Nothing was changed."
    })
    static Result<FramePlan> of(View view, FramePlan plan) {
        if (!sides(plan).stream().allMatch(side -> side > 0 && side <= MOST_MM)) {
            return Result.refused("bad-size", Bundle.PlanCheck_size());
        }
        if (!lengths(plan).allMatch(length -> length >= 0 && length <= MOST_MM)) {
            return Result.refused("bad-length", Bundle.PlanCheck_length());
        }
        if (plan.moulding().filter(m -> m.lipMm() > m.widthMm()).isPresent()) {
            return Result.refused("bad-length", Bundle.PlanCheck_lip());
        }
        if (plan.place().filter(p -> view.find(KeepingPlace.TYPE, p).isEmpty()).isPresent()) {
            return Result.refused("no-place", Bundle.PlanCheck_place());
        }
        return Result.ok(plan);
    }

    private static List<Double> sides(FramePlan plan) {
        return Stream.of(plan.artworkWidthMm(), plan.artworkHeightMm())
                .flatMap(Optional::stream)
                .toList();
    }

    private static Stream<Double> lengths(FramePlan plan) {
        Stream<Double> ofMoulding = plan.moulding().stream().flatMap(PlanCheck::lengths);
        return Stream.concat(Stream.of(plan.allowanceMm(), plan.kerfMm()), ofMoulding);
    }

    private static Stream<Double> lengths(Moulding moulding) {
        return Stream.of(moulding.widthMm(), moulding.lipMm(), moulding.rebateDepthMm());
    }
}
