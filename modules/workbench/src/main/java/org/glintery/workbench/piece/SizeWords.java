package org.glintery.workbench.piece;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.glintery.api.stash.Canvas;

/** Reads a size in centimetres as people write it: "35 x 45", "30,5x40". Pure. */
public final class SizeWords {
    private static final Pattern SIZE = Pattern.compile(
            "\\s*(\\d{1,4}(?:[.,]\\d+)?)\\s*(?:cm)?\\s*[x×*]\\s*(\\d{1,4}(?:[.,]\\d+)?)\\s*(?:cm)?\\s*");
    private static final double MM_A_CM = 10;

    private SizeWords() {}

    /** Nothing typed is a size that was not said; empty when the text is not understood. */
    public static Optional<Canvas> read(String text) {
        if (text.isBlank()) {
            return Optional.of(Canvas.NOT_SAID);
        }
        Matcher matcher = SIZE.matcher(text.toLowerCase(java.util.Locale.ROOT));
        if (!matcher.matches()) {
            return Optional.empty();
        }
        double width = number(matcher.group(1)) * MM_A_CM;
        double height = number(matcher.group(2)) * MM_A_CM;
        return width > 0 && height > 0 ? Optional.of(Canvas.drilled(width, height)) : Optional.empty();
    }

    /** As it would be typed; blank when one of both is not known. */
    static String typed(Optional<Double> widthMm, Optional<Double> heightMm) {
        return widthMm.isEmpty() || heightMm.isEmpty()
                ? ""
                : PieceWords.cm(widthMm.get()) + " x " + PieceWords.cm(heightMm.get());
    }

    private static double number(String text) {
        return Double.parseDouble(text.replace(',', '.'));
    }
}
