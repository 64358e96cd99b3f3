package org.glintery.workbench.piece;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import org.glintery.api.stash.Standing;
import org.glintery.api.time.About;
import org.junit.jupiter.api.Test;

class PieceWordsTest {
    private static final Optional<About> DAY = Optional.of(About.on(LocalDate.of(2026, 2, 3)));

    @Test
    void saysSinceWhen_whileItGoesOn() {
        assertThat(PieceWords.standing(Standing.ON_THE_BENCH, DAY)).isEqualTo("On the bench since 3 February 2026");
        assertThat(PieceWords.standing(Standing.RESTING, DAY)).isEqualTo("Resting since 3 February 2026");
    }

    @Test
    void saysWhen_ofWhatHappenedOnce() {
        assertThat(PieceWords.standing(Standing.MADE, DAY)).isEqualTo("Made, 3 February 2026");
        assertThat(PieceWords.standing(Standing.LET_GO, DAY)).isEqualTo("Let go, 3 February 2026");
        assertThat(PieceWords.standing(Standing.MADE, Optional.empty())).isEqualTo("Made");
    }
}
