package org.glintery.commands;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.glintery.api.verb.Verb;

/** The verbs that are there, and the names of ours that could be. Immutable. */
final class VerbCatalogue {

    private static final int MOST_NEAR = 8;

    private final List<Verb> verbs;
    private final KnownVerbs known;

    VerbCatalogue(Collection<? extends Verb> verbs, KnownVerbs known) {
        this.verbs = verbs.stream().sorted(Comparator.comparing(Verb::name)).collect(Collectors.toUnmodifiableList());
        this.known = known;
    }

    /** The verb that the words begin with; of several, the one of most words. */
    Optional<Verb> startOf(List<String> words) {
        return verbs.stream()
                .filter(verb -> begins(words, verb.name()))
                .max(Comparator.comparingInt(verb -> verb.name().split(" ").length));
    }

    /** The verbs of each feature, in the order of their names. */
    Map<String, List<Verb>> byFeature() {
        return verbs.stream().collect(Collectors.groupingBy(Verb::feature, TreeMap::new, Collectors.toList()));
    }

    /** The feature whose verb the words begin with, when it is one of ours that is not there. */
    Optional<String> switchedOff(List<String> words) {
        return known.featureByVerb().entrySet().stream()
                .filter(entry -> begins(words, entry.getKey()))
                .map(Map.Entry::getValue)
                .filter(feature -> !byFeature().containsKey(feature))
                .findFirst();
    }

    /** Verbs that may have been meant, the likeliest first: of the same first word, or written nearly so. */
    List<String> near(List<String> words) {
        String one = words.get(0);
        String two = String.join(" ", words.subList(0, Math.min(2, words.size())));
        return verbs.stream()
                .map(Verb::name)
                .filter(name -> Spelling.near(name, two) || Spelling.near(name.split(" ")[0], one))
                .sorted(Comparator.comparingInt(name -> Spelling.distance(name, two)))
                .limit(MOST_NEAR)
                .toList();
    }

    private static boolean begins(List<String> words, String name) {
        List<String> wanted = List.of(name.split(" "));
        return words.size() >= wanted.size() && words.subList(0, wanted.size()).equals(wanted);
    }
}
