package org.glintery.framing.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.glintery.api.stash.Canvas;
import org.glintery.api.stash.Standing;
import org.glintery.framing.FrameShop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BenchChoiceTest {
    @Test
    void putsPiecesOfAKnownSizeFirst_soThatThereIsSomethingToSee(@TempDir Path folder) {
        try (FrameShop shop = FrameShop.at(folder)) {
            shop.piece("A made one without a size", Standing.MADE, Canvas.NOT_SAID);
            shop.piece("B on the bench", Standing.ON_THE_BENCH, Canvas.drilled(300, 400));
            shop.made("C made", 300, 400);
            shop.piece("D on the shelf", Standing.SHELVED, Canvas.drilled(300, 400));

            assertThat(BenchChoice.of(shop.view()))
                    .extracting(BenchChoice::words)
                    .containsExactly("C made", "B on the bench", "A made one without a size (size not known yet)");
        }
    }
}
