package org.glintery.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class DrillsPerCanvasTest {

    // Common practice, no published source: 2.5 mm is 16 a cm2; 35 x 45 cm 25 200; 40 x 60 cm 38 400.
    @Test
    void countsSquareDrills_asIsCommon() {
        assertThat(DrillsPerCanvas.of(10_000, 10_000, DrillsPerCanvas.SQUARE_PITCH_UM)
                        .drills())
                .isEqualTo(16);
        assertThat(DrillsPerCanvas.of(350_000, 450_000, DrillsPerCanvas.SQUARE_PITCH_UM))
                .isEqualTo(new DrillsPerCanvas(140, 180));
        assertThat(DrillsPerCanvas.of(350_000, 450_000, DrillsPerCanvas.SQUARE_PITCH_UM)
                        .drills())
                .isEqualTo(25_200);
        assertThat(DrillsPerCanvas.of(400_000, 600_000, DrillsPerCanvas.SQUARE_PITCH_UM)
                        .drills())
                .isEqualTo(38_400);
    }

    // Common practice, no published source: round drills on 40 x 60 cm are about 30 400.
    @Test
    void countsRoundDrills_asIsCommon() {
        DrillsPerCanvas canvas = DrillsPerCanvas.of(400_000, 600_000, DrillsPerCanvas.ROUND_PITCH_UM);
        assertThat(canvas).isEqualTo(new DrillsPerCanvas(142, 214));
        assertThat((double) canvas.drills()).isCloseTo(30_400, within(50.0));
    }

    @Test
    void refusesNoGrid() {
        assertThat(DrillsPerCanvas.of(2_499, 10_000, 2_500).drills()).isZero();
        assertThatThrownBy(() -> DrillsPerCanvas.of(1, 1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> DrillsPerCanvas.of(-1, 1, 1)).isInstanceOf(IllegalArgumentException.class);
    }
}
