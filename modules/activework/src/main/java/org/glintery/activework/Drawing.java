package org.glintery.activework;

import java.util.HashMap;
import java.util.Map;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Precondition;
import org.glintery.api.workshop.View;

/** Takes drills from spots without taking any twice in one change. Not safe for use by several threads. */
final class Drawing {

    private record From(Spot spot, Drill drill) {}

    private final View view;
    private final Map<From, Long> left = new HashMap<>();

    Drawing(View view) {
        this.view = view;
    }

    /** How many of those wanted are still there; the change stands only as long as the spot is as it was seen. */
    long take(ChangeSet.Builder change, Spot spot, Drill drill, long wanted) {
        long there = there(change, spot, drill);
        long taken = Math.min(wanted, there);
        left.put(new From(spot, drill), there - taken);
        return taken;
    }

    /** Drills that came back with this change can be taken again. */
    void giveBack(ChangeSet.Builder change, Spot spot, Drill drill, long count) {
        left.put(new From(spot, drill), there(change, spot, drill) + count);
    }

    private long there(ChangeSet.Builder change, Spot spot, Drill drill) {
        return left.computeIfAbsent(new From(spot, drill), from -> {
            Balance there = view.balance(spot, drill);
            change.require(new Precondition.BalanceAt(spot, drill, there));
            return Math.max(0, there.count());
        });
    }
}
