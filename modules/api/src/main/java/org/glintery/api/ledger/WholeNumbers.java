package org.glintery.api.ledger;

import java.util.Collection;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Whole numbers as spreadsheets write them: thousands in groups by comma, point, blank or apostrophe, zeros after a
 * decimal sign. Immutable.
 */
final class WholeNumbers {
    private static final Pattern GROUPED =
            Pattern.compile("([1-9]\\d{0,2}(?:([.,'\u2019 ])\\d{3})(?:\\2\\d{3})*)(?:([.,])(\\d+))?");
    private static final Pattern PLAIN = Pattern.compile("(\\d+)(?:([.,])(\\d+))?");
    private static final Pattern SURELY_DECIMAL =
            Pattern.compile("(?=\\d{4,}[.,]|0[.,]|\\d+[.,](?:\\d{1,2}|\\d{4,})$)\\d+(?<sign>[.,])\\d+");
    private static final Pattern SURELY_GROUPED = Pattern.compile(
            "(?<![\\d.,])[1-9]\\d{0,2}(?<sign>[.,])(?:(?!000)\\d{3}|\\d{3}(?:\\k<sign>\\d{3}|(?!\\k<sign>)[.,]\\d+))(?!\\d)");
    private static final Pattern EITHER =
            Pattern.compile("(?<![\\d.,])(?<whole>[1-9]\\d{0,2})(?<sign>[.,])000(?![\\d.,])");
    private static final int MOST_DIGITS = 18;

    private final Set<String> decimalSigns;
    private final Set<String> groupSigns;

    private WholeNumbers(Set<String> decimalSigns, Set<String> groupSigns) {
        this.decimalSigns = decimalSigns;
        this.groupSigns = groupSigns;
    }

    /** What is no whole number in bounds. */
    static final class NotOneException extends Exception {
        private static final long serialVersionUID = 1L;
        private final AmountWords.Fault fault;

        NotOneException(AmountWords.Fault fault) {
            super(fault.name(), null, false, false);
            this.fault = fault;
        }

        AmountWords.Fault fault() {
            return fault;
        }
    }

    static WholeNumbers alone() {
        return new WholeNumbers(Set.of(), Set.of());
    }

    /** Learns from numbers of the same table which sign begins decimals there. */
    static WholeNumbers asIn(Collection<String> numbers) {
        Set<String> decimals = new TreeSet<>();
        Set<String> groups = new TreeSet<>();
        for (String number : numbers) {
            Matcher decimal = SURELY_DECIMAL.matcher(number);
            if (decimal.matches()) {
                decimals.add(decimal.group("sign"));
            }
            Matcher grouped = SURELY_GROUPED.matcher(number);
            while (grouped.find()) {
                groups.add(grouped.group("sign"));
            }
        }
        return new WholeNumbers(decimals, groups);
    }

    /** What the first such number would be if its last three zeros were decimals, where nothing tells that they are not. */
    OptionalLong smallerReading(String text) {
        Matcher either = EITHER.matcher(text);
        while (either.find()) {
            if (!decimalSigns.contains(either.group("sign")) && !groupSigns.contains(either.group("sign"))) {
                return OptionalLong.of(Long.parseLong(either.group("whole")));
            }
        }
        return OptionalLong.empty();
    }

    long read(String written, long most) throws NotOneException {
        String digits = digits(written.strip().replaceFirst("^\\+", "")).replaceFirst("^0+(?=.)", "");
        if (digits.length() > MOST_DIGITS || Long.parseLong(digits) > most) {
            throw new NotOneException(AmountWords.Fault.TOO_LARGE);
        }
        return Long.parseLong(digits);
    }

    private String digits(String text) throws NotOneException {
        Matcher grouped = GROUPED.matcher(text);
        boolean isGrouped = grouped.matches()
                && !decimalSigns.contains(grouped.group(2))
                && !grouped.group(2).equals(grouped.group(3));
        if (isGrouped && isZero(grouped.group(4))) {
            return grouped.group(1).replaceAll("\\D", "");
        }
        Matcher plain = PLAIN.matcher(text);
        if (!isGrouped && plain.matches() && isZero(plain.group(3))) {
            return plain.group(1);
        }
        throw new NotOneException(AmountWords.Fault.NOT_WHOLE);
    }

    private static boolean isZero(String decimals) {
        return decimals == null || decimals.matches("0+");
    }
}
