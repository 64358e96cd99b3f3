package org.glintery.records;

import java.time.Clock;
import org.glintery.api.workshop.Workshops;

/** The workshops of the application, with a fault before one step of a change. Not safe for use by several threads. */
public final class FaultyWorkshops {
    private volatile int faultAt = Integer.MAX_VALUE;
    private volatile boolean met;

    /** The fault, as somebody's programming error would be. */
    public static final class Fault extends IllegalStateException {
        private static final long serialVersionUID = 1L;

        Fault(int place) {
            super("a fault before step " + place);
        }
    }

    public Workshops workshops() {
        return new H2Workshops(Clock.systemDefaultZone(), this::before);
    }

    private void before(int place) {
        if (place == faultAt) {
            met = true;
            throw new Fault(place);
        }
    }

    /** From now on the step at a place of any change meets a fault. */
    public void breakBefore(int place) {
        met = false;
        faultAt = place;
    }

    public void mend() {
        faultAt = Integer.MAX_VALUE;
    }

    /** Whether a step was met by the fault since it was put in. */
    public boolean wasMet() {
        return met;
    }
}
