package org.glintery.workbench.looks;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.io.IOException;
import java.util.List;
import java.util.Properties;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Contrast of the theme's colours, after WCAG 2.2: 1.4.3 for text (4.5), 1.4.11 for outlines of controls (3). */
class ThemeContrastTest {
    private static final double TEXT = 4.5;
    private static final double OUTLINE = 3;
    private static final List<String> GROUNDS =
            List.of("Glintery.paper", "Glintery.sheet", "Glintery.edgePaper", "Glintery.cautionPaper");
    private static final List<String> INKS =
            List.of("Glintery.ink", "Glintery.faint", "Glintery.accent", "Glintery.trouble", "Glintery.caution");

    @ParameterizedTest
    @ValueSource(strings = {"Light", "Dark"})
    void textCanBeRead_onEveryGround(String face) throws IOException {
        Properties theme = Contrast.theme(face);
        for (String ground : GROUNDS) {
            for (String ink : INKS) {
                assertThat(contrast(theme, ink, ground))
                        .as(ink + " on " + ground)
                        .isGreaterThanOrEqualTo(TEXT);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"Light", "Dark"})
    void wordsOnFilledControlsCanBeRead(String face) throws IOException {
        Properties theme = Contrast.theme(face);
        assertThat(contrast(theme, "Glintery.onAccent", "Glintery.accent")).isGreaterThanOrEqualTo(TEXT);
        assertThat(contrast(theme, "Glintery.accent", "Glintery.accentSoft")).isGreaterThanOrEqualTo(TEXT);
        assertThat(contrast(theme, "@selectionForeground", "@selectionBackground"))
                .isGreaterThanOrEqualTo(TEXT);
        assertThat(contrast(theme, "@selectionInactiveForeground", "@selectionInactiveBackground"))
                .isGreaterThanOrEqualTo(TEXT);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Light", "Dark"})
    void outlinesOfControlsCanBeSeen(String face) throws IOException {
        Properties theme = Contrast.theme(face);
        for (String ground : List.of("Glintery.paper", "Glintery.sheet")) {
            assertThat(contrast(theme, "Glintery.edge", ground)).as(ground).isGreaterThanOrEqualTo(OUTLINE);
        }
    }

    private static double contrast(Properties theme, String one, String other) {
        return Contrast.between(Color.decode(theme.getProperty(one)), Color.decode(theme.getProperty(other)));
    }
}
