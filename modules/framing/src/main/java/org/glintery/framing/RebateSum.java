package org.glintery.framing;

import java.util.UUID;
import org.glintery.api.framing.FrameDepth;
import org.glintery.api.framing.FramePlan;
import org.glintery.api.framing.FramePlan.Glazing;
import org.glintery.api.framing.Moulding;
import org.glintery.api.ledger.Body;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.Piece;
import org.glintery.api.workshop.View;

/**
 * What lies in a rebate, added up. How high drills stand and how thick cloth and backing are is common practice, no
 * published source; all on the safe side. Pure; any thread.
 */
final class RebateSum {

    private static final double FLAT_DRILL_MM = 1.5;
    private static final double CRYSTAL_MM = 2.5;
    private static final double SPECIAL_SHAPE_MM = 4;
    private static final double AIR_MM = 1.5;
    private static final double CANVAS_MM = 0.5;
    private static final double BACKING_MM = 3;

    private RebateSum() {}

    static FrameDepth of(View view, UUID piece, FramePlan plan) {
        boolean glazed = plan.glazing().material() != Glazing.Material.NONE;
        double drillMm = tallestMm(view, piece);
        return new FrameDepth(
                plan.glazing().thicknessMm(),
                glazed ? drillMm + AIR_MM : 0,
                drillMm,
                CANVAS_MM,
                BACKING_MM,
                plan.moulding().map(Moulding::rebateDepthMm).filter(depth -> depth > 0));
    }

    /** By the legend; by the shape of most drills where there is none. */
    private static double tallestMm(View view, UUID piece) {
        double byShape = view.find(Piece.TYPE, piece)
                .flatMap(stored -> stored.value().drillShape())
                .filter(shape -> shape == Shape.SPECIAL)
                .map(shape -> SPECIAL_SHAPE_MM)
                .orElse(FLAT_DRILL_MM);
        return Legend.of(view, piece).lines().stream()
                .map(LegendLine::drill)
                .mapToDouble(RebateSum::heightMm)
                .max()
                .orElse(byShape);
    }

    private static double heightMm(Drill drill) {
        if (drill.shape() == Shape.SPECIAL) {
            return SPECIAL_SHAPE_MM;
        }
        return drill.body() == Body.CRYSTAL ? CRYSTAL_MM : FLAT_DRILL_MM;
    }
}
