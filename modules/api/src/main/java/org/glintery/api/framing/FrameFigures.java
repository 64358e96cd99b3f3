package org.glintery.api.framing;

import java.util.List;
import java.util.Optional;
import org.glintery.api.Stable;

/**
 * What a frame plan comes to. Lengths in millimetres.
 *
 * @param railWidthMm the two rails across, outer edge
 * @param railHeightMm the two rails down
 * @param lengthMm all four rails and one kerf a cut
 * @param unitedInches width plus height of the artwork, in inches
 * @param glazingMassG mass of the glazing in grams; empty without glazing
 * @param readyMade ready-made sizes it fits, best first, in words
 */
@Stable
public record FrameFigures(
        double artworkWidthMm,
        double artworkHeightMm,
        double railWidthMm,
        double railHeightMm,
        double lengthMm,
        double unitedInches,
        Optional<Double> glazingMassG,
        List<String> readyMade) {
    public FrameFigures {
        readyMade = List.copyOf(readyMade);
    }
}
