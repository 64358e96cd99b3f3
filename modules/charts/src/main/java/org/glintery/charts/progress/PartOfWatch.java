package org.glintery.charts.progress;

import org.glintery.api.charts.Watch;

/** A part of longer work that somebody follows. @param from which share of the whole is done before it, 0 to 1 */
public record PartOfWatch(Watch whole, double from, double to) implements Watch {

    @Override
    public void reached(double share) {
        whole.reached(from + (to - from) * share);
    }

    @Override
    public boolean isCancelled() {
        return whole.isCancelled();
    }
}
