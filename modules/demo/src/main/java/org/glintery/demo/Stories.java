package org.glintery.demo;

import java.util.Map;

/** What there is to tell of some pieces. Invented. */
final class Stories {
    private static final Map<String, String> TOLD = Map.of(
            Told.RELAY,
            "The club's shared challenge: nine sections between April and November, unequal on purpose. I rested the sixth"
                    + " while the ferry was in dock.",
            Told.BOARD,
            "The figures on the departures board are only a few drills high. Perhaps it should have been the larger size.",
            Told.WINDOWS,
            "Each window has its mirror. One pane on the right is not the shade of its fellow on the left.",
            Told.WATERLINE,
            "Resting until I have made up my mind about metallic drills along the waterline.",
            Told.LIT,
            "Round drills. The lit windows would like some pearl, but the pearl in the house is square.",
            "Rope-walk at low water",
            "My first picture with a deep view. Laid from the far door outwards.",
            "The noon ferry",
            "A year of evenings, on and off. The largest one so far.");

    private Stories() {}

    static String of(String title) {
        return TOLD.getOrDefault(title, "");
    }
}
