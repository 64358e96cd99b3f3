package org.glintery.planning.clearing;

import java.util.List;
import org.glintery.api.Preview;

/**
 * Packets that a trader would like to get.
 *
 * @param trader its place in the round
 * @param kinds any of these serves, in any mixture
 * @param priority what comes first has the lower number
 */
@Preview(since = "1.0")
public record Want(int trader, List<Integer> kinds, int packets, int priority) {
    public Want {
        kinds = kinds.stream().distinct().toList();
    }
}
