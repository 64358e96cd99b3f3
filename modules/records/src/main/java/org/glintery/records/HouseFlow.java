package org.glintery.records;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.glintery.api.ledger.Spot;

/**
 * What a change does to the drills at hand, by the number of the drill. What goes to {@code lost} is left
 * out: a loss is a fact, whatever is reserved.
 */
final class HouseFlow {
    private final Map<Integer, Long> net = new HashMap<>();
    private final Set<Integer> touched = new HashSet<>();

    void moved(int drill, Spot from, Spot to, long count) {
        long out = from.inTheHouse() && !isLoss(to) ? count : 0;
        long in = to.inTheHouse() ? count : 0;
        if (in != out) {
            net.merge(drill, in - out, Math::addExact);
            touched.add(drill);
        }
    }

    void reservationTouched(int drill) {
        touched.add(drill);
    }

    long net(int drill) {
        return net.getOrDefault(drill, 0L);
    }

    /** Drills whose availability may have changed. */
    Set<Integer> touched() {
        return touched;
    }

    private static boolean isLoss(Spot to) {
        return to instanceof Spot.Boundary boundary && boundary.edge() == Spot.Edge.LOST;
    }
}
