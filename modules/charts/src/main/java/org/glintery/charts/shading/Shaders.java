package org.glintery.charts.shading;

import org.glintery.api.charts.Shading;

/** The way for each shading. */
public final class Shaders {

    private Shaders() {}

    /**
     * Where strays matter, they are a term of the same energy for every shading: without shading each cell's own error is
     * set against them; of a diffused or scattered chart only the strays are exchanged.
     *
     * @param strays 0, they are no matter, to 1, as few as may be
     */
    public static Shader of(Shading shading, double strays) {
        boolean calm = strays > 0;
        return switch (shading) {
            case NONE -> calm ? new Searched(new Plain(), EnergyWeights.cells(strays), false) : new Plain();
            case DIFFUSED -> calm ? calmed(new Diffused(), strays) : new Diffused();
            case SCATTERED -> calm ? calmed(new Scattered(), strays) : new Scattered();
            case SEARCHED -> new Searched(new Scattered(), EnergyWeights.seen(strays), false);
        };
    }

    private static Shader calmed(Shader start, double strays) {
        return new Searched(start, EnergyWeights.seen(strays), true);
    }
}
