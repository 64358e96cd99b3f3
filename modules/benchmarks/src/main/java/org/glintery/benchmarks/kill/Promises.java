package org.glintery.benchmarks.kill;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import org.glintery.benchmarks.packaged.PostedMovement;

/**
 * What was sent to be booked in one workshop, and what was promised to be kept. One thread sends, another reads what is
 * printed.
 */
final class Promises {

    private final Map<UUID, PostedMovement> sent = new ConcurrentHashMap<>();
    private final Set<UUID> printed = new HashSet<>();

    void sent(PostedMovement movement) {
        sent.put(movement.id(), movement);
    }

    void printed(UUID id) {
        printed.add(id);
    }

    int sentSoFar() {
        return sent.size();
    }

    int printedSoFar() {
        return printed.size();
    }

    /**
     * How a ledger differs from what was sent and promised.
     *
     * @param missing promised and not there
     * @param doubled there more than once
     * @param strange there and not sent, or another movement than was sent
     */
    record Breaches(int missing, int doubled, int strange) {
        int all() {
            return missing + doubled + strange;
        }
    }

    /** Takes the entries of a ledger one by one. */
    final class Comparison {
        private final Map<UUID, PostedMovement> there = new HashMap<>();
        private int doubled;

        void entry(PostedMovement movement) {
            if (there.put(movement.id(), movement) != null) {
                doubled++;
            }
        }

        int entries() {
            return there.size() + doubled;
        }

        Breaches breaches() {
            int missing =
                    (int) printed.stream().filter(id -> !there.containsKey(id)).count();
            int strange = (int) there.entrySet().stream()
                    .filter(entry -> !entry.getValue().equals(sent.get(entry.getKey())))
                    .count();
            return new Breaches(missing, doubled, strange);
        }
    }

    Comparison compare() {
        return new Comparison();
    }
}
