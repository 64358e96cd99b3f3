package org.glintery.exchange.legend;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Colours as {@code #3c6e71}, {@code 3C6E71}, {@code #abc}, {@code 0x3c6e71}, {@code rgb(60, 110, 113)} or {@code 60 110 113}. */
final class ColourWords {
    private static final Pattern SIX = Pattern.compile("(?:#|0x)?([0-9a-f]{6})");
    private static final Pattern THREE = Pattern.compile("#([0-9a-f])([0-9a-f])([0-9a-f])");
    private static final Pattern NUMBERS =
            Pattern.compile("(?:rgb)?\\s*\\(?\\s*(\\d{1,3})\\s*[,; ]\\s*(\\d{1,3})\\s*[,; ]\\s*(\\d{1,3})\\s*\\)?");

    private ColourWords() {}

    /** The colour as {@code #rrggbb} in lower case; empty when it is none. */
    static Optional<String> hex(String written) {
        String text = written.strip().toLowerCase(Locale.ROOT);
        Matcher six = SIX.matcher(text);
        if (six.matches()) {
            return Optional.of("#" + six.group(1));
        }
        Matcher three = THREE.matcher(text);
        if (three.matches()) {
            return Optional.of("#" + three.group(1).repeat(2) + three.group(2).repeat(2)
                    + three.group(3).repeat(2));
        }
        Matcher numbers = NUMBERS.matcher(text);
        return numbers.matches() ? ofParts(numbers) : Optional.empty();
    }

    private static Optional<String> ofParts(Matcher numbers) {
        int[] parts = new int[3];
        for (int i = 0; i < parts.length; i++) {
            parts[i] = Integer.parseInt(numbers.group(i + 1));
            if (parts[i] > 255) {
                return Optional.empty();
            }
        }
        return Optional.of(String.format(Locale.ROOT, "#%02x%02x%02x", parts[0], parts[1], parts[2]));
    }
}
