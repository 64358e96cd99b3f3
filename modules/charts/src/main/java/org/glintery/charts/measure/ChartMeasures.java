package org.glintery.charts.measure;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.glintery.api.charts.ChartFigures;
import org.glintery.charts.picture.LightGrid;
import org.glintery.charts.shading.DrillColours;
import org.glintery.charts.shading.LabGrid;
import org.glintery.charts.shading.Shader;
import org.glintery.charts.shading.Strays;
import org.glintery.charts.viewing.Viewing;
import org.glintery.colour.Ciede2000;

/** Measures how far a chart is from what it should look like, cell by cell and as it is seen from a distance. */
public final class ChartMeasures {

    /** Four sigma. */
    private static final int REACH = 6;

    private ChartMeasures() {}

    /** Blank cells do not count. All is 0 when there is no other. */
    public static ChartFigures of(LightGrid wanted, DrillColours colours, int[] drills) {
        LabGrid lab = LabGrid.of(wanted);
        double[] byCell = IntStream.range(0, drills.length)
                .parallel()
                .filter(cell -> drills[cell] != Shader.NONE)
                .mapToDouble(cell -> colours.difference(drills[cell], lab, cell))
                .toArray();
        double[] seen = seen(wanted, colours, drills);
        return new ChartFigures(
                mean(byCell),
                of95(byCell),
                mean(seen),
                of95(seen),
                byCell.length == 0
                        ? 0
                        : (double) Strays.count(wanted.columns(), wanted.rows(), drills) / byCell.length);
    }

    private static double[] seen(LightGrid wanted, DrillColours colours, int[] drills) {
        Viewing viewing = new Viewing(wanted.columns(), wanted.rows(), REACH);
        double[][] should = new double[3][];
        double[][] is = new double[3][];
        for (int channel = 0; channel < 3; channel++) {
            double[] light = wanted.channel(channel);
            should[channel] = viewing.seen(light);
            for (int cell = 0; cell < light.length; cell++) {
                light[cell] = drills[cell] == Shader.NONE ? light[cell] : colours.channel(drills[cell], channel);
            }
            is[channel] = viewing.seen(light);
        }
        LabGrid shouldBe = LabGrid.of(LightGrid.of(wanted.columns(), wanted.rows(), should, wanted::isBlank));
        LabGrid looks = LabGrid.of(LightGrid.of(wanted.columns(), wanted.rows(), is, wanted::isBlank));
        return IntStream.range(0, drills.length)
                .parallel()
                .filter(cell -> drills[cell] != Shader.NONE)
                .mapToDouble(cell -> Ciede2000.difference(shouldBe.colour(cell), looks.colour(cell)))
                .toArray();
    }

    private static double mean(double[] values) {
        return Arrays.stream(values).average().orElse(0);
    }

    /** What 95 of 100 do not exceed. */
    private static double of95(double[] values) {
        if (values.length == 0) {
            return 0;
        }
        return Rank.of(values.clone(), (int) Math.ceil(0.95 * values.length) - 1);
    }
}
