package org.glintery.planning.clearing;

import org.glintery.api.Preview;

/**
 * Packets that a trader would give.
 *
 * @param trader its place in the round
 * @param kind any number that stands for what is in the packets
 */
@Preview(since = "1.0")
public record Offer(int trader, int kind, int packets) {}
