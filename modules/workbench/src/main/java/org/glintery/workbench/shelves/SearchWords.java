package org.glintery.workbench.shelves;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** The words of a query, in lower case, with what other people call things turned into our words. Pure. */
final class SearchWords {
    private static final Map<String, String> SYNONYMS = Map.ofEntries(
            Map.entry("diamond", "drill"),
            Map.entry("diamonds", "drill"),
            Map.entry("gem", "drill"),
            Map.entry("gems", "drill"),
            Map.entry("bead", "drill"),
            Map.entry("beads", "drill"),
            Map.entry("drills", "drill"),
            Map.entry("mat", "mount"),
            Map.entry("mats", "mount"),
            Map.entry("wip", "on the bench"),
            Map.entry("done", "made"),
            Map.entry("finished", "made"),
            Map.entry("wishlist", "hoped for"),
            Map.entry("stash", "shelved"));

    private SearchWords() {}

    static List<String> of(String query) {
        return Stream.of(query.toLowerCase(Locale.ROOT).strip().split("\\s+"))
                .filter(word -> !word.isEmpty())
                .map(word -> SYNONYMS.getOrDefault(word, word))
                .toList();
    }
}
