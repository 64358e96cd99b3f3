package org.glintery.workbench.piece;

import static org.assertj.core.api.Assertions.assertThat;

import org.glintery.api.stash.Canvas;
import org.junit.jupiter.api.Test;

class SizeWordsTest {
    @Test
    void readsSizes_asPeopleWriteThem() {
        assertThat(SizeWords.read("35 x 45")).contains(Canvas.drilled(350, 450));
        assertThat(SizeWords.read("30,5x40 cm")).contains(Canvas.drilled(305, 400));
        assertThat(SizeWords.read("40 × 60")).contains(Canvas.drilled(400, 600));
        assertThat(SizeWords.read("")).contains(Canvas.NOT_SAID);
    }

    @Test
    void understandsNothing_whenItIsNoSize() {
        assertThat(SizeWords.read("large")).isEmpty();
        assertThat(SizeWords.read("35")).isEmpty();
        assertThat(SizeWords.read("0 x 45")).isEmpty();
    }
}
