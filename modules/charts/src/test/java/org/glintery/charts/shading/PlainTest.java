package org.glintery.charts.shading;

import static org.assertj.core.api.Assertions.assertThat;

import org.glintery.api.charts.Shading;
import org.glintery.charts.References;
import org.glintery.charts.TestPictures;
import org.glintery.charts.picture.LightGrid;
import org.junit.jupiter.api.Test;

class PlainTest {

    @Test
    void isTheNearestDrill_inEveryCell() {
        LightGrid wanted = TestPictures.averaged(TestPictures.resource("coffee.png"), 150, 100);
        DrillColours colours = new DrillColours(References.isccNbs());
        int[] drills = Shaders.of(Shading.NONE, 0).shaded(wanted, colours);
        LabGrid lab = LabGrid.of(wanted);
        for (int cell = 0; cell < drills.length; cell++) {
            assertThat(drills[cell]).as("cell %d", cell).isEqualTo(nearest(colours, lab, cell));
        }
    }

    @Test
    void laysNothing_inBlankCells() {
        LightGrid wanted = Grids.waves(40, 30, 121, true);
        int[] drills = new Plain().shaded(wanted, Grids.colours(9, 122));
        for (int cell = 0; cell < drills.length; cell++) {
            assertThat(drills[cell] == Shader.NONE).isEqualTo(wanted.isBlank(cell));
        }
    }

    private static int nearest(DrillColours colours, LabGrid lab, int cell) {
        int nearest = 0;
        for (int drill = 1; drill < colours.size(); drill++) {
            if (colours.difference(drill, lab, cell) < colours.difference(nearest, lab, cell)) {
                nearest = drill;
            }
        }
        return nearest;
    }
}
