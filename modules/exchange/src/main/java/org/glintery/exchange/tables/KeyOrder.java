package org.glintery.exchange.tables;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * An order of keys that agrees with all objects seen, each of which may lack some. Not safe for use by several threads.
 */
final class KeyOrder {
    private final Map<String, Set<String>> followers = new LinkedHashMap<>();
    private Map<String, Integer> places = Map.of();
    private boolean contradictory;
    private boolean stale;

    /** @param keys of one object, in their order */
    void learn(Iterable<String> keys) {
        String before = null;
        for (String key : keys) {
            stale |= followers.putIfAbsent(key, new LinkedHashSet<>()) == null;
            if (before != null) {
                stale |= followers.get(before).add(key);
            }
            before = key;
        }
    }

    void learnAll(KeyOrder other) {
        other.followers.forEach((key, after) -> {
            followers.computeIfAbsent(key, k -> new LinkedHashSet<>()).addAll(after);
            stale = true;
        });
    }

    /** All keys; where objects contradict each other, in an order that does not agree with all of them. */
    List<String> sorted() {
        return List.copyOf(places().keySet());
    }

    boolean agreesWith(Iterable<String> keys) {
        int last = -1;
        for (String key : keys) {
            int place = places().getOrDefault(key, -1);
            if (place <= last) {
                return false;
            }
            last = place;
        }
        return true;
    }

    /** Whether some object's order can't be had. */
    boolean isContradictory() {
        places();
        return contradictory;
    }

    private Map<String, Integer> places() {
        if (stale) {
            stale = false;
            places = new LinkedHashMap<>();
            sort().forEach(key -> places.put(key, places.size()));
            contradictory = followers.entrySet().stream()
                    .anyMatch(entry -> entry.getValue().stream()
                            .anyMatch(after -> places.get(after) <= places.get(entry.getKey())));
        }
        return places;
    }

    /** Takes again and again the first key that no other one left must precede; Kahn, 1962. */
    private List<String> sort() {
        Map<String, Integer> preceding = new LinkedHashMap<>();
        followers.keySet().forEach(key -> preceding.put(key, 0));
        followers.values().forEach(after -> after.forEach(key -> preceding.merge(key, 1, Integer::sum)));
        List<String> order = new ArrayList<>(preceding.size());
        while (!preceding.isEmpty()) {
            String next = preceding.entrySet().stream()
                    .filter(entry -> entry.getValue() == 0)
                    .map(Map.Entry::getKey)
                    .findFirst()
                    .orElseGet(() -> preceding.keySet().iterator().next());
            preceding.remove(next);
            followers.get(next).forEach(key -> preceding.computeIfPresent(key, (k, count) -> count - 1));
            order.add(next);
        }
        return order;
    }
}
