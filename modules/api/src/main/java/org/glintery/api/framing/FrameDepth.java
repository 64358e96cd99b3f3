package org.glintery.api.framing;

import java.util.Optional;
import org.glintery.api.Stable;

/**
 * What has to fit into the rebate of a frame, from front to back. Lengths in millimetres.
 *
 * @param glazingMm 0 without glazing
 * @param spacerMm keeps the glazing off the drills; 0 without glazing
 * @param drillMm how high the tallest drill of the piece stands
 * @param canvasMm the cloth with its adhesive
 * @param backingMm the board behind
 * @param rebateMm what the moulding has; empty when that is not told
 */
@Stable
public record FrameDepth(
        double glazingMm,
        double spacerMm,
        double drillMm,
        double canvasMm,
        double backingMm,
        Optional<Double> rebateMm) {

    /** A spacer stands beside the drills: only the higher of both counts. */
    public double neededMm() {
        return glazingMm + Math.max(spacerMm, drillMm) + canvasMm + backingMm;
    }

    /** By how much the rebate is too shallow; empty when it is deep enough or not told. */
    public Optional<Double> shortMm() {
        return rebateMm.map(has -> neededMm() - has).filter(over -> over > 0);
    }
}
