package org.glintery.charts.shading;

import org.glintery.charts.picture.LightGrid;

/** A way to choose a drill for each cell. Any thread. */
public interface Shader {

    /** Stands for no drill: a blank cell. */
    int NONE = -1;

    /** For each cell the place of its drill among the colours, or {@link #NONE}. */
    int[] shaded(LightGrid wanted, DrillColours colours);
}
