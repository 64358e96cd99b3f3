package org.glintery.charts.shading;

import java.util.stream.IntStream;
import org.glintery.api.charts.Watch;
import org.glintery.charts.picture.LightGrid;
import org.glintery.charts.progress.Steps;

/** No shading: each cell gets the nearest drill under CIEDE2000. */
final class Plain implements Shader {

    @Override
    public int[] shaded(LightGrid wanted, DrillColours colours, Watch watch) {
        Steps steps = new Steps(watch, wanted.rows());
        int[] drills = new int[wanted.cells()];
        IntStream.range(0, wanted.rows()).parallel().filter(row -> steps.next()).forEach(row -> {
            double[] lab = new double[3];
            for (int cell = row * wanted.columns(); cell < (row + 1) * wanted.columns(); cell++) {
                if (wanted.isBlank(cell)) {
                    drills[cell] = NONE;
                } else {
                    LabConversion.of(wanted.red(cell), wanted.green(cell), wanted.blue(cell), lab);
                    drills[cell] = colours.nearest(lab[0], lab[1], lab[2]);
                }
            }
        });
        steps.check();
        return drills;
    }
}
