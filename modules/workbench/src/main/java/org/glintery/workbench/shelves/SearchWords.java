package org.glintery.workbench.shelves;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The words of a query, in lower case, each with what we call the same thing. What was typed counts too, for it may be
 * the beginning of something else. Pure.
 */
final class SearchWords {
    private static final Map<String, String> SYNONYMS = Map.ofEntries(
            Map.entry("diamond", "drill"),
            Map.entry("diamonds", "drill"),
            Map.entry("gem", "drill"),
            Map.entry("gems", "drill"),
            Map.entry("bead", "drill"),
            Map.entry("beads", "drill"),
            Map.entry("drills", "drill"),
            Map.entry("rhinestone", "crystal"),
            Map.entry("rhinestones", "crystal"),
            Map.entry("crystals", "crystal"),
            Map.entry("mat", "mount"),
            Map.entry("mats", "mount"),
            Map.entry("matted", "mount"),
            Map.entry("passepartout", "mount"),
            Map.entry("started", "on the bench"),
            Map.entry("paused", "resting"),
            Map.entry("done", "made"),
            Map.entry("finished", "made"),
            Map.entry("completed", "made"),
            Map.entry("wishlist", "hoped for"),
            Map.entry("sold", "let go"));

    private SearchWords() {}

    /** Of each word what may stand for it in a text: any one of these will do. */
    static List<List<String>> of(String query) {
        return Stream.of(query.toLowerCase(Locale.ROOT).strip().split("\\s+"))
                .filter(word -> !word.isEmpty())
                .map(word -> SYNONYMS.containsKey(word) ? List.of(word, SYNONYMS.get(word)) : List.of(word))
                .toList();
    }
}
