package org.glintery.workbench.looks;

import java.awt.Color;
import java.io.IOException;
import java.io.InputStream;
import java.util.Properties;

/** Contrast between colours of the theme, after WCAG 2.2. */
public final class Contrast {
    private Contrast() {}

    /** @param face Light or Dark */
    public static Properties theme(String face) throws IOException {
        Properties theme = new Properties();
        try (InputStream in =
                Looks.class.getResourceAsStream("/org/glintery/workbench/theme/" + face + ".properties")) {
            theme.load(in);
        }
        return theme;
    }

    public static double between(Color one, Color other) {
        double a = luminance(one);
        double b = luminance(other);
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
