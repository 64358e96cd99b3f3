package org.glintery.api.charts;

import org.glintery.api.Preview;

/** Follows long work. Called on the threads that do it. */
@Preview(since = "1.0")
public interface Watch {

    /** Nobody looks. */
    Watch NONE = new Watch() {
        @Override
        public void reached(double share) {}

        @Override
        public boolean isCancelled() {
            return false;
        }
    };

    /** How much of the work is done, 0 to 1. */
    void reached(double share);

    /** Whether the work is to end soon, without an outcome. */
    boolean isCancelled();
}
