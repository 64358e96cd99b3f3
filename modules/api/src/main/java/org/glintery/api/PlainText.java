package org.glintery.api;

import java.util.Optional;

/**
 * Text without control characters: they hide in what is pasted and read from files, and would move the cursor of whoever
 * prints them. Every record of this API cleans what it holds, so a name is the same wherever it came from. Pure; any thread.
 */
@Preview(since = "1.0")
public final class PlainText {
    private static final char NEXT_LINE = '\u0085';
    private static final char LINE_SEPARATOR = '\u2028';
    private static final char PARAGRAPH_SEPARATOR = '\u2029';

    private PlainText() {}

    /** A name, a title, a code: a line break or tab in it becomes a blank, any other control character goes. */
    public static String line(String text) {
        if (text == null || isClean(text, false)) {
            return text;
        }
        StringBuilder clean = new StringBuilder(text.length());
        boolean gap = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (isGap(c)) {
                gap = true;
            } else if (!isControl(c)) {
                boolean blankThere = c == ' ' || endsWithBlank(clean);
                clean.append(gap && !blankThere ? " " : "").append(c);
                gap = false;
            }
        }
        return clean.toString().strip();
    }

    /** As {@link #line(String)}; what holds nothing but control characters is not there. */
    public static Optional<String> line(Optional<String> text) {
        return text == null
                ? null
                : text.map(PlainText::line)
                        .filter(left -> !left.isEmpty() || text.get().isEmpty());
    }

    /** What may be long, such as notes: line breaks, all written alike, and tabs stay, other control characters go. */
    public static String lines(String text) {
        if (text == null || isClean(text, true)) {
            return text;
        }
        StringBuilder clean = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (!isControl(c) || c == '\n' || c == '\t') {
                clean.append(c);
            } else if (isGap(c) && !(c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n')) {
                clean.append('\n');
            }
        }
        return clean.toString();
    }

    /** Whether it is one of those that are taken out. */
    public static boolean isControl(int c) {
        return Character.isISOControl(c) || c == LINE_SEPARATOR || c == PARAGRAPH_SEPARATOR;
    }

    private static boolean isClean(String text, boolean severalLines) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (isControl(c) && !(severalLines && (c == '\n' || c == '\t'))) {
                return false;
            }
        }
        return true;
    }

    /** Whether it sets what is before and behind it apart. */
    private static boolean isGap(char c) {
        return (c >= '\t' && c <= '\r') || c == NEXT_LINE || c == LINE_SEPARATOR || c == PARAGRAPH_SEPARATOR;
    }

    private static boolean endsWithBlank(CharSequence text) {
        return text.length() > 0 && text.charAt(text.length() - 1) == ' ';
    }
}
