package org.glintery.exchange.legend;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.openide.util.NbBundle.Messages;

/**
 * Whole numbers as spreadsheets write them: thousands in groups by comma, point, blank or apostrophe, zeros after a
 * decimal sign, a word such as "pcs" behind. 1.234 is one thousand and more, unless other numbers of the same table show
 * that the point begins its decimals. Immutable.
 */
@Messages({
    "# {0} - what stands there",
    "figure-negative=''{0}'' is below zero",
    "# {0} - what stands there",
    "figure-not-whole=''{0}'' is not a whole number",
    "# {0} - what stands there",
    "# {1} - most",
    "figure-too-large=''{0}'' is more than {1}"
})
final class Figures {
    private static final Pattern UNIT =
            Pattern.compile("\\s*(pcs|pieces|drills?|diamonds?|gems?|beads?|bags?|packets?|packs?)\\.?$");
    private static final Pattern GROUPED =
            Pattern.compile("([1-9]\\d{0,2}(?:([.,'\u2019 ])\\d{3})(?:\\2\\d{3})*)(?:([.,])(\\d+))?");
    private static final Pattern PLAIN = Pattern.compile("(\\d+)(?:([.,])(\\d+))?");
    private static final Pattern SURELY_DECIMAL =
            Pattern.compile("(?=\\d{4,}[.,]|0[.,]|\\d+[.,](?:\\d{1,2}|\\d{4,})$)\\d+(?<sign>[.,])\\d+");
    private static final int LONGEST = 60;
    private static final Set<String> UNKNOWN = Set.of("n/a", "na", "unknown", "not known", "tbc", "tba");

    private final Set<String> decimalSigns;

    private Figures(Set<String> decimalSigns) {
        this.decimalSigns = decimalSigns;
    }

    /** @param numbers the cells of a table's number columns */
    static Figures asIn(Collection<String> numbers) {
        Set<String> signs = new TreeSet<>();
        for (String number : numbers) {
            Matcher matcher = SURELY_DECIMAL.matcher(plain(number));
            if (matcher.matches()) {
                signs.add(matcher.group("sign"));
            }
        }
        return new Figures(signs);
    }

    /** What was read: a value, or a fault, or neither when the cell does not say. */
    record Read(OptionalLong value, Optional<String> fault) {
        private static final Read SILENT = new Read(OptionalLong.empty(), Optional.empty());

        private static Read fault(String reason) {
            return new Read(OptionalLong.empty(), Optional.of(reason));
        }
    }

    Read whole(String cell, long most) {
        String text = plain(cell);
        if (text.matches("[-–—?]*") || UNKNOWN.contains(text)) {
            return Read.SILENT;
        }
        String shown = Signs.shortened(cell.strip());
        if (text.matches("[-−–]\\s*[\\d.,]+")) {
            return Read.fault(Bundle.figure_negative(shown));
        }
        Optional<String> digits = digits(text);
        if (digits.isEmpty()) {
            return Read.fault(Bundle.figure_not_whole(shown));
        }
        String significant = digits.get().replaceFirst("^0+(?=.)", "");
        if (significant.length() > 18 || Long.parseLong(significant) > most) {
            return Read.fault(Bundle.figure_too_large(
                    shown, String.format(Locale.ROOT, "%,d", most).replace(',', ' ')));
        }
        return new Read(OptionalLong.of(Long.parseLong(significant)), Optional.empty());
    }

    private Optional<String> digits(String text) {
        Matcher grouped = GROUPED.matcher(text);
        if (grouped.matches()
                && !decimalSigns.contains(grouped.group(2))
                && !grouped.group(2).equals(grouped.group(3))) {
            return isZero(grouped.group(4)) ? Optional.of(grouped.group(1).replaceAll("\\D", "")) : Optional.empty();
        }
        Matcher plain = PLAIN.matcher(text);
        return plain.matches() && isZero(plain.group(3)) ? Optional.of(plain.group(1)) : Optional.empty();
    }

    private static boolean isZero(String decimals) {
        return decimals == null || decimals.matches("0+");
    }

    /** In lower case, without a unit; blanks of any width are one kind. */
    private static String plain(String cell) {
        String text = cell.replaceAll("[\\u00a0\\u2009\\u202f]", " ").strip().toLowerCase(Locale.ROOT);
        return text.length() > LONGEST ? text : UNIT.matcher(text).replaceFirst("");
    }
}
