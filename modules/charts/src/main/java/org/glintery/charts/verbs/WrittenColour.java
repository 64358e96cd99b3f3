package org.glintery.charts.verbs;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.glintery.colour.Lab;
import org.glintery.colour.Srgb;

/** A colour as a caller writes it: {@code L,a,b} against the D65 white, or the hex of a screen colour. */
final class WrittenColour {

    private static final String NUMBER = "\\s*([-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?)\\s*";
    private static final Pattern LAB = Pattern.compile(NUMBER + "," + NUMBER + "," + NUMBER);

    /** What light of no more than the white's can reach: the factors of CIELAB's own formula (CIE 15). */
    private static final int MOST_L = 100;

    private static final int MOST_A = 500;
    private static final int MOST_B = 200;

    private WrittenColour() {}

    /** Empty when it is neither, or out of bounds. */
    static Optional<Lab> lab(String written) {
        Matcher lab = LAB.matcher(written);
        if (lab.matches()) {
            double lightness = number(lab, 1);
            double a = number(lab, 2);
            double b = number(lab, 3);
            boolean within = lightness >= 0 && lightness <= MOST_L && Math.abs(a) <= MOST_A && Math.abs(b) <= MOST_B;
            return within ? Optional.of(new Lab(lightness, a, b)) : Optional.empty();
        }
        return Srgb.parse(written).map(Srgb::lab);
    }

    private static double number(Matcher lab, int group) {
        return Double.parseDouble(lab.group(group));
    }
}
