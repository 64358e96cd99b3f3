package org.glintery.api.verb;

import java.math.BigDecimal;
import java.text.MessageFormat;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.glintery.api.Preview;

/**
 * Numbers with decimals as a caller writes them, behind a point or a comma. A comma before three digits may begin decimals or
 * thousands; of money so may a point: such a number is not guessed. Pure; any thread.
 */
@Preview(since = "1.0")
public final class WrittenDecimal {
    private static final Pattern NUMBER = Pattern.compile("[-+]?(?:\\d{1,15}(?:[.,]\\d{0,15})?|[.,]\\d{1,15})");
    private static final Pattern EITHER = Pattern.compile("([-+]?[1-9]\\d{0,2}),(\\d{3})");
    private static final Pattern EITHER_MONEY = Pattern.compile("([-+]?[1-9]\\d{0,2})[.,](\\d{3})");

    private static final Pattern SPACED =
            Pattern.compile("[-+]?\\d{1,3}(?:[ \u2009\u202f\u00a0]\\d{3}){1,4}(?:[.,]\\d{0,15})?");

    private WrittenDecimal() {}

    /** Empty when it is no number, or could be one of two. */
    public static Optional<BigDecimal> of(String written) {
        return read(written, EITHER);
    }

    /** As {@link #of}, for money. */
    public static Optional<BigDecimal> ofMoney(String written) {
        return read(written, EITHER_MONEY);
    }

    /** A sentence with both readings of an option's value, where there are two. */
    public static Optional<String> doubt(String option, String written) {
        return sentence(option, written, EITHER);
    }

    /** As {@link #doubt}, for money. */
    public static Optional<String> doubtOfMoney(String option, String written) {
        return sentence(option, written, EITHER_MONEY);
    }

    private static Optional<BigDecimal> read(String written, Pattern either) {
        String number =
                SPACED.matcher(written.strip()).matches() ? written.replaceAll("[^-+.,\\d]", "") : written.strip();
        return NUMBER.matcher(number).matches() && !either.matcher(number).matches()
                ? Optional.of(new BigDecimal(number.replace(',', '.').replaceFirst("\\.$", "")))
                : Optional.empty();
    }

    private static Optional<String> sentence(String option, String written, Pattern either) {
        Matcher both = either.matcher(written.strip());
        if (!both.matches()) {
            return Optional.empty();
        }
        ResourceBundle texts = ResourceBundle.getBundle(WrittenDecimal.class.getPackageName() + ".Bundle");
        return Optional.of(MessageFormat.format(
                texts.getString("WrittenDecimal.either"),
                option,
                written.strip(),
                both.group(1) + "." + both.group(2),
                both.group(1) + both.group(2)));
    }
}
