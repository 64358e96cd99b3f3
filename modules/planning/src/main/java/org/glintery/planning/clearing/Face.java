package org.glintery.planning.clearing;

import java.util.List;
import org.glintery.planning.flow.Bounds;

/**
 * All the best ways to meet wants at once: a plan meets most exactly when it keeps these bounds and uses only the lanes
 * that pass here. That follows from the potentials of the cheapest flows by complementary slackness.
 *
 * @param offers by offer, how many packets may leave
 * @param wants by want, how many packets may arrive
 * @param givesMore by trader, how much more may be given than got; {@code getsMore} the other way round
 * @param gets by trader, how many packets may arrive in all
 * @param levels the potentials of the offers' and the wants' nodes, a pair for each cost
 */
record Face(Bounds offers, Bounds wants, Bounds givesMore, Bounds getsMore, Bounds gets, List<Level> levels) {

    /** The potentials for one cost, by offer and by want. */
    record Level(long[] offers, long[] wants) {}

    /** Whether packets may go from this offer to this want, provided that the kind is right. */
    boolean passes(int offer, int want) {
        if (offers.high()[offer] == 0 || wants.high()[want] == 0) {
            return false;
        }
        for (Level level : levels) {
            if (level.offers[offer] != level.wants[want]) {
                return false;
            }
        }
        return true;
    }
}
