package org.glintery.exchange.legend;

/** Which characters a text can hold. */
final class Signs {
    private static final int LONGEST_SHOWN = 40;

    private Signs() {}

    /** Whether these are signs that no text has: control characters but for blanks and line ends, halves of characters. */
    static boolean areUnprintable(String text) {
        return text.codePoints().anyMatch(Signs::isUnprintable);
    }

    private static boolean isUnprintable(int c) {
        boolean control = c < ' ' && c != '\t' && c != '\n' && c != '\r' && c != '\f';
        boolean half = c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE;
        return control || half || (c & 0xFFFE) == 0xFFFE;
    }

    static String shortened(String text) {
        return text.length() > LONGEST_SHOWN ? text.substring(0, LONGEST_SHOWN) + "…" : text;
    }
}
