package org.glintery.api.verb;

import java.util.Optional;
import java.util.regex.Pattern;
import org.glintery.api.Preview;

/** Whole numbers as a caller writes them: plain, or with spaces between their thousands as we print them. Pure; any thread. */
@Preview(since = "1.0")
public final class WrittenWhole {
    private static final Pattern PLAIN = Pattern.compile("[-+]?\\d{1,19}");
    private static final Pattern SPACED = Pattern.compile("[-+]?\\d{1,3}(?:[ \u2009\u202f\u00a0]\\d{3}){1,6}");

    private WrittenWhole() {}

    /** Empty when it is no whole number. A comma or point is never guessed. */
    public static Optional<Long> of(String written) {
        String text = written.strip();
        String digits = SPACED.matcher(text).matches() ? text.replaceAll("[^-+\\d]", "") : text;
        try {
            return PLAIN.matcher(digits).matches() ? Optional.of(Long.parseLong(digits)) : Optional.empty();
        } catch (NumberFormatException e) {
            return Optional.empty(); // beyond what a long holds
        }
    }
}
