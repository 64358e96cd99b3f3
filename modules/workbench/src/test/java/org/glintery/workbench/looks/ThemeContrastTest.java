package org.glintery.workbench.looks;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.io.IOException;
import java.io.InputStream;
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
        Properties theme = theme(face);
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
        Properties theme = theme(face);
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
        Properties theme = theme(face);
        for (String ground : List.of("Glintery.paper", "Glintery.sheet")) {
            assertThat(contrast(theme, "Glintery.edge", ground)).as(ground).isGreaterThanOrEqualTo(OUTLINE);
        }
    }

    private static Properties theme(String face) throws IOException {
        Properties theme = new Properties();
        try (InputStream in =
                Looks.class.getResourceAsStream("/org/glintery/workbench/theme/" + face + ".properties")) {
            theme.load(in);
        }
        return theme;
    }

    private static double contrast(Properties theme, String one, String other) {
        double a = luminance(Color.decode(theme.getProperty(one)));
        double b = luminance(Color.decode(theme.getProperty(other)));
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    /** Relative luminance as WCAG 2.2 defines it. */
    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(int channel) {
        double c = channel / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }
}
