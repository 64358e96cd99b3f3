package org.glintery.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What was asked for on the command line: names of benchmarks and {@code --option NUMBER}.
 *
 * @param names none for all
 */
record Choice(List<String> names, Map<String, Long> options) {

    static final String USAGE = "Usage: benchmarks [NAME ...] [--seed N] [--rounds N] [--long-rounds N]";

    /** @throws IllegalArgumentException when the words make no sense */
    static Choice of(List<String> words) {
        List<String> names = new ArrayList<>();
        Map<String, Long> options = new TreeMap<>();
        for (int i = 0; i < words.size(); i++) {
            String word = words.get(i);
            if (!word.startsWith("--")) {
                names.add(word);
            } else if (!List.of("--seed", "--rounds", "--long-rounds").contains(word) || i + 1 == words.size()) {
                throw new IllegalArgumentException(USAGE);
            } else {
                options.put(word.substring(2), Long.parseLong(words.get(++i)));
            }
        }
        return new Choice(names, options);
    }

    boolean wants(String name) {
        return names.isEmpty() || names.contains(name);
    }

    /** Told when a figure depends on chance, so that it can be had again. */
    long seed() {
        return options.getOrDefault("seed", 1L);
    }

    int number(String option, int usual) {
        return Math.toIntExact(options.getOrDefault(option, (long) usual));
    }
}
