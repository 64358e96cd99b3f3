package org.glintery.workbench.shelves;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class TitleOrderTest {
    @Test
    void sortsNumbersByTheirValue_andCapitalsAlike() {
        assertThat(List.of("Signal board 10", "net loft", "Signal board 9", "Net loft 2", "signal", "").stream()
                        .sorted(new TitleOrder()))
                .containsExactly("", "net loft", "Net loft 2", "signal", "Signal board 9", "Signal board 10");
    }

    @Test
    void weighsLeadingZerosAndLongNumbers() {
        assertThat(
                        List.of(
                                        "Set 0012",
                                        "Set 11",
                                        "Set 9",
                                        "Set 007",
                                        "Set 123456789012345678901",
                                        "Set 10b",
                                        "Set 10")
                                .stream()
                                .sorted(new TitleOrder()))
                .containsExactly(
                        "Set 007", "Set 9", "Set 10", "Set 10b", "Set 11", "Set 0012", "Set 123456789012345678901");
    }

    @Test
    void tellsTitlesApart_thatDifferInCapitalsOnly() {
        assertThat(new TitleOrder().compare("Crane", "crane")).isNotZero();
        assertThat(new TitleOrder().compare("Crane", "Crane")).isZero();
    }
}
