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

    private WrittenColour() {}

    /** Empty when it is neither. */
    static Optional<Lab> lab(String written) {
        Matcher lab = LAB.matcher(written);
        if (lab.matches()) {
            return Optional.of(new Lab(number(lab, 1), number(lab, 2), number(lab, 3)));
        }
        return Srgb.parse(written).map(Srgb::lab);
    }

    private static double number(Matcher lab, int group) {
        return Double.parseDouble(lab.group(group));
    }
}
