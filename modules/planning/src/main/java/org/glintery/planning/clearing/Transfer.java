package org.glintery.planning.clearing;

import org.glintery.api.Preview;

/**
 * Packets of one kind that go from one trader to another.
 *
 * @param throughOrganiser whether they go to the organiser first
 */
@Preview(since = "1.0")
public record Transfer(int from, int to, int kind, int packets, boolean throughOrganiser) {

    /** The same with another number of packets. */
    public Transfer with(int count) {
        return new Transfer(from, to, kind, count, throughOrganiser);
    }
}
