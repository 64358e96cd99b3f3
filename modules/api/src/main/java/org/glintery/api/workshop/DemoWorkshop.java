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
    Result<Applied> fill(Workshop workshop, long seed, Watch watch);

    /** As {@link #fill(Workshop, long, Watch)}, without anybody watching. */
    default Result<Applied> fill(Workshop workshop, long seed) {
        return fill(workshop, seed, share -> true);
    }

    /** Told how far the work is. */
    @FunctionalInterface
    interface Watch {

        /**
         * Several threads; quick.
         *
         * @param share done, from 0 to 1
         * @return whether to go on; after a no the demo is refused with {@code left}, and nothing was changed
         */
        boolean reached(double share);
    }
}
