package org.glintery.workbench.today;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class CardColumnsTest {
    @Test
    void fitsAsManyColumns_asTheWidthHolds() {
        assertThat(CardColumns.columns(300, 360, 18, 3)).isEqualTo(1);
        assertThat(CardColumns.columns(737, 360, 18, 3)).isEqualTo(1);
        assertThat(CardColumns.columns(738, 360, 18, 3)).isEqualTo(2);
        assertThat(CardColumns.columns(5_000, 360, 18, 3)).isEqualTo(3);
    }
}
