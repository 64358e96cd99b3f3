package org.glintery.workbench.menu;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class BuildWordsTest {
    @Test
    void tellsVersionAndDay_asTheBuildWroteThem() {
        assertThat(BuildWords.of("1.4", "202611302031")).isEqualTo("Version 1.4, built on 30 November 2026");
    }

    @Test
    void tellsTheVersionAlone_whenTheBuildIsNoDay() {
        assertThat(BuildWords.of("2.0", "null")).isEqualTo("Version 2.0");
        assertThat(BuildWords.of("2.0", "20269999-1")).isEqualTo("Version 2.0");
    }
}
