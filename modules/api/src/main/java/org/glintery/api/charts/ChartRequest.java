package org.glintery.api.charts;

import java.util.Set;
import org.glintery.api.Preview;
import org.glintery.api.stash.ColourCard;

/**
 * What a chart is to be made of.
 *
 * @param picture the bytes of its file; not copied
 * @param quarterTurns to the right, before it is cropped
 * @param crop of the turned picture; what is left is fitted to the grid
 * @param colours how many of the card's colours at most
 * @param pinned codes that may be used in any case
 * @param banned codes that may not
 * @param strays 0, single drills are no matter, to 1, as few as may be
 */
@Preview(since = "1.0")
public record ChartRequest(
        byte[] picture,
        int quarterTurns,
        Crop crop,
        Grid grid,
        Outline outline,
        ColourCard card,
        int colours,
        Set<String> pinned,
        Set<String> banned,
        Shading shading,
        double strays) {

    public ChartRequest {
        pinned = Set.copyOf(pinned);
        banned = Set.copyOf(banned);
    }

    /** The whole picture in all colours of the card, searched. */
    public static ChartRequest of(byte[] picture, ColourCard card, Grid grid) {
        return new ChartRequest(
                picture,
                0,
                Crop.WHOLE,
                grid,
                Outline.WHOLE,
                card,
                Integer.MAX_VALUE,
                Set.of(),
                Set.of(),
                Shading.SEARCHED,
                0);
    }
}
