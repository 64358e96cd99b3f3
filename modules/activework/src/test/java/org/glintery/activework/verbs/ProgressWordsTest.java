package org.glintery.activework.verbs;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.glintery.api.activework.Progress;
import org.junit.jupiter.api.Test;

class ProgressWordsTest {

    private static String words(Long total, Long laid, Double share, boolean estimated) {
        return ProgressWords.of(new Progress(
                Optional.ofNullable(total), Optional.ofNullable(laid), Optional.ofNullable(share), estimated, 1, 0));
    }

    @Test
    void thousandsAreSetApart_whateverTheLocale() {
        assertThat(words(20_000L, 1_234L, 0.0617, false)).isEqualTo("1\u2009234 of 20\u2009000 drills are laid, 6 %.");
        assertThat(words(null, 1_234L, null, false))
                .isEqualTo("1\u2009234 drills are laid; how many the whole takes is not known.");
    }

    @Test
    void oneDrillIsLaid_othersAre() {
        assertThat(words(20_000L, 1L, 0.00005, false)).isEqualTo("1 of 20\u2009000 drills is laid, less than 1 %.");
        assertThat(words(20_000L, 0L, 0.0, false)).isEqualTo("0 of 20\u2009000 drills are laid, 0 %.");
        assertThat(words(null, 1L, null, false)).isEqualTo("1 drill is laid; how many the whole takes is not known.");
        assertThat(words(null, 0L, null, false)).startsWith("0 drills are laid;");
    }

    @Test
    void aLittleIsNotNothing() {
        assertThat(words(20_000L, 5L, 0.00025, false)).isEqualTo("5 of 20\u2009000 drills are laid, less than 1 %.");
        assertThat(words(null, null, 0.004, true)).isEqualTo("Less than 1 % is laid.");
        assertThat(words(null, null, 0.0, false)).isEqualTo("0 % is laid.");
    }

    @Test
    void anEstimateSaysAbout() {
        assertThat(words(400L, 100L, 0.25, true)).isEqualTo("About 100 of 400 drills are laid, 25 %.");
        assertThat(words(null, null, 0.999, true)).isEqualTo("About 99 % is laid.");
        assertThat(words(null, 3L, null, true)).startsWith("About 3 drills are laid;");
        assertThat(words(null, null, null, false)).isEqualTo("How far it is can't be told yet.");
    }
}
