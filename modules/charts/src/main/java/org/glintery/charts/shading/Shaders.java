package org.glintery.charts.shading;

import java.util.Optional;
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
            case DIFFUSED -> calmed(new Diffused(), strays, Optional.empty());
            case SCATTERED -> calmed(new Scattered(), strays, Optional.empty());
            case SEARCHED -> new Searched(new Scattered(), EnergyWeights.seen(strays), false);
        };
    }

    /**
     * The same with no more drills of each colour than there are.
     *
     * @param plain how cells that stand by themselves share them
     * @param counts by colour; for all cells at least
     */
    public static Shader withinCounts(Shading shading, double strays, Shader plain, int[] counts) {
        boolean calm = strays > 0;
        Optional<int[]> kept = Optional.of(counts);
        return switch (shading) {
            case NONE -> calm ? new Searched(plain, EnergyWeights.cells(strays), false, kept) : plain;
            case DIFFUSED -> calmed(new WithinCounts(new Diffused(), counts), strays, kept);
            case SCATTERED -> calmed(new WithinCounts(new Scattered(), counts), strays, kept);
            case SEARCHED ->
                new Searched(new WithinCounts(new Scattered(), counts), EnergyWeights.seen(strays), false, kept);
        };
    }

    private static Shader calmed(Shader start, double strays, Optional<int[]> counts) {
        return strays > 0 ? new Searched(start, EnergyWeights.seen(strays), true, counts) : start;
    }
}
