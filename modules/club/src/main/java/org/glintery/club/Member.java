package org.glintery.club;

import java.util.Optional;
import org.glintery.api.Preview;

/**
 * A member of a club.
 *
 * @param id of their key, or for one without a computer the name of the organiser's document about them
 * @param name as they call themselves: plain text, whatever it looks like
 * @param keptBy the organiser who writes for a member without a computer
 * @param admitted whether the organiser put them on the roll
 */
@Preview(since = "1.0")
public record Member(String id, String name, Optional<String> keptBy, boolean admitted) {
    /** Longer names are not shown. */
    public static final int LONGEST_NAME = 80;
}
