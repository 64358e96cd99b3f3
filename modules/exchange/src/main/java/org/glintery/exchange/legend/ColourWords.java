package org.glintery.exchange.legend;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Colours as {@code #3c6e71}, {@code 3C6E71}, {@code #abc}, {@code 0x3c6e71}, {@code rgb(60, 110, 113)}, {@code 60 110 113},
 * {@code R60 G110 B113} or {@code rgb(24%, 43%, 44%)}.
 */
final class ColourWords {
    private static final Pattern SIX = Pattern.compile("(?:#|0x|&h)?\\s*([0-9a-f]{6})(?:h)?");
    private static final Pattern OPAQUE = Pattern.compile("#([0-9a-f]{6})ff");
    private static final Pattern THREE = Pattern.compile("#([0-9a-f])([0-9a-f])([0-9a-f])");
    private static final Pattern NUMBERS =
            Pattern.compile("(?:s?rgb)?\\s*[(\\[]?\\s*(?:r\\s*[:=]?\\s*)?(\\d{1,3}%?)\\s*[,;/ -]"
                    + "\\s*(?:g\\s*[:=]?\\s*)?(\\d{1,3}%?)\\s*[,;/ -]\\s*(?:b\\s*[:=]?\\s*)?(\\d{1,3}%?)\\s*[)\\]]?");
    /** A spreadsheet took the colour for a number and left its first zeros away; three digits might be short for six. */
    private static final Pattern WITHOUT_ZEROS = Pattern.compile("0|\\d{4,5}");

    private ColourWords() {}

    /** The colour as {@code #rrggbb} in lower case; empty when it is none. */
    static Optional<String> hex(String written) {
        String text = written.strip().toLowerCase(Locale.ROOT);
        for (Pattern whole : new Pattern[] {SIX, OPAQUE}) {
            Matcher six = whole.matcher(text);
            if (six.matches()) {
                return Optional.of("#" + six.group(1));
            }
        }
        Matcher three = THREE.matcher(text);
        if (three.matches()) {
            return Optional.of("#" + three.group(1).repeat(2) + three.group(2).repeat(2)
                    + three.group(3).repeat(2));
        }
        if (WITHOUT_ZEROS.matcher(text).matches()) {
            return Optional.of("#" + "0".repeat(6 - text.length()) + text);
        }
        Matcher numbers = NUMBERS.matcher(text);
        return numbers.matches() ? ofParts(numbers) : Optional.empty();
    }

    private static Optional<String> ofParts(Matcher numbers) {
        var hex = new StringBuilder("#");
        for (int i = 1; i <= 3; i++) {
            int part = part(numbers.group(i));
            if (part > 255) {
                return Optional.empty();
            }
            hex.append(String.format(Locale.ROOT, "%02x", part));
        }
        return Optional.of(hex.toString());
    }

    private static int part(String written) {
        if (!written.endsWith("%")) {
            return Integer.parseInt(written);
        }
        BigDecimal percent = new BigDecimal(written.substring(0, written.length() - 1));
        return percent.multiply(new BigDecimal("2.55"))
                .setScale(0, RoundingMode.HALF_UP)
                .intValue();
    }
}
