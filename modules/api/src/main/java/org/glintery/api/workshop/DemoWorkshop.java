package org.glintery.api.workshop;

import org.glintery.api.Preview;
import org.glintery.api.Result;

/** Fills a workshop with the demo. Found by {@code Lookup}, where the demo is there. */
@Preview(since = "1.0")
public interface DemoWorkshop {

    /**
     * Fills an empty workshop. The same seed gives the same demo. Disk; not on the event thread. Refused with {@code
     * not-empty} when anything is kept there.
     */
    Result<Applied> fill(Workshop workshop, long seed);
}
