package org.glintery.api.charts;

import org.glintery.api.Preview;

/**
 * What a line of a design takes.
 *
 * @param index of the line
 * @param drills how many cells have it
 * @param laid how many of these are laid
 */
@Preview(since = "1.0")
public record LineNeed(int index, DesignLine line, long drills, long laid) {

    /** How many are still to be laid. */
    public long left() {
        return drills - laid;
    }
}
