package org.glintery.framing;

import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.framing.FrameDepth;
import org.glintery.api.framing.FrameFigures;
import org.glintery.api.framing.FramePlan;
import org.glintery.api.framing.Framing;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.View;

/** Framing, computed from views. Holds nothing; any thread. */
public final class ComputedFraming implements Framing {

    @Override
    public Result<ChangeSet> decide(View view, UUID piece, FramePlan plan) {
        return PlanCheck.of(view, plan).then(checked -> new FrameDeciding(view, piece).decide(checked));
    }

    @Override
    public Result<FrameFigures> figures(View view, UUID piece, FramePlan plan) {
        return PlanCheck.of(view, plan)
                .then(checked -> Artwork.of(view, piece, checked))
                .then(artwork -> new RailFigures(artwork, plan).figures());
    }

    @Override
    public FrameDepth depth(View view, UUID piece, FramePlan plan) {
        return RebateSum.of(view, piece, plan);
    }
}
