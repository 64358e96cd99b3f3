package org.glintery.activework.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.glintery.api.activework.Laid;
import org.glintery.api.activework.Progress;
import org.junit.jupiter.api.Test;

class LaidWordsTest {

    @Test
    void oneDrillAndOneSectionAreNotSeveral() {
        assertThat(LaidWords.of(Laid.drills(1))).isEqualTo("1 drill");
        assertThat(LaidWords.of(Laid.drills(0))).isEqualTo("0 drills");
        assertThat(LaidWords.of(Laid.sections(1))).isEqualTo("1 section");
        assertThat(LaidWords.of(Laid.sections(2))).isEqualTo("2 sections");
    }

    @Test
    void aLittleIsNotNothing() {
        assertThat(LaidWords.of(new Progress(Optional.empty(), Optional.empty(), Optional.of(0.004), true, 1, 0)))
                .isEqualTo("less than 1 % laid");
    }

    @Test
    void thousandsAreSetApart() {
        assertThat(LaidWords.of(Laid.drills(12_345))).isEqualTo("12\u2009345 drills");
        assertThat(LaidWords.of(new Progress(Optional.empty(), Optional.of(1_234L), Optional.empty(), false, 3, 0)))
                .isEqualTo("1\u2009234 drills laid; how many the whole takes is not known");
    }
}
