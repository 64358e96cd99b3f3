package org.glintery.api.activework;

import java.util.Optional;
import org.glintery.api.Stable;

/**
 * How far a piece is.
 *
 * @param totalDrills what the whole takes; from the legend, else from the canvas, else empty
 * @param laidDrills told in drills, or worked out from percent or sections
 * @param share 0 to 1; empty when it can't be told
 * @param estimated whether any of it was worked out rather than told
 * @param minutes worked, as far as told
 */
@Stable
public record Progress(
        Optional<Long> totalDrills,
        Optional<Long> laidDrills,
        Optional<Double> share,
        boolean estimated,
        int sittings,
        int minutes) {}
