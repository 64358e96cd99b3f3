package org.glintery.demo;

import java.util.Map;

/** What there is to tell of some pieces. Invented. */
final class Stories {
    private static final Map<String, String> TOLD = Map.of(
            Plot.RELAY,
            "The club's shared challenge: nine sections between April and November, unequal on purpose. I let the sixth"
                    + " rest while the ferry was in dock, and went on with the seventh.",
            Plot.BOARD,
            "The figures on the departures board are only a few drills high. Perhaps it should have been the larger size.",
            Plot.WINDOWS,
            "Each window on the left has its mirror on the right. One pane is not the shade of its fellow.",
            Plot.WATERLINE,
            "Resting until I have made up my mind about metallic drills along the waterline.",
            Plot.LIT,
            "Round drills. The lit windows would like some pearl, but the pearl in the house is square.",
            Plot.LATEST,
            "My first picture with a deep view. Laid from the far door outwards.",
            Plot.FUNNEL,
            "The largest one so far. It hung in the ferry saloon for a week.",
            "Tea tin, ferry blue",
            "To go round the club's tea tin. Both ends meet in the middle of a rope.",
            "Small pail, roofs and waves",
            "For the pail by the door. It is narrower at the foot than at the rim, so the band has to be bent.");

    private Stories() {}

    static String of(String title) {
        return TOLD.getOrDefault(title, "");
    }
}
