package org.glintery.charts.shading;

import org.glintery.api.charts.Watch;
import org.glintery.charts.picture.LightGrid;

/** A way to choose a drill for each cell. Any thread. */
public interface Shader {

    /** Stands for no drill: a blank cell. */
    int NONE = -1;

    /** As {@link #shaded(LightGrid, DrillColours, Watch)}, when nobody looks. */
    default int[] shaded(LightGrid wanted, DrillColours colours) {
        return shaded(wanted, colours, Watch.NONE);
    }

    /**
     * For each cell the place of its drill among the colours, or {@link #NONE}.
     *
     * @throws java.util.concurrent.CancellationException when the watch cancels
     */
    int[] shaded(LightGrid wanted, DrillColours colours, Watch watch);
}
