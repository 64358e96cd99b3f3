package org.glintery.workbench.shelves;

import java.util.Comparator;

/** Titles as people sort them: without regard to capitals, and numbers by their value, 9 before 10. Pure. */
final class TitleOrder implements Comparator<String> {

    @Override
    public int compare(String one, String other) {
        int at = 0;
        int otherAt = 0;
        while (at < one.length() && otherAt < other.length()) {
            int end = endOfRun(one, at);
            int otherEnd = endOfRun(other, otherAt);
            int order = runs(one.substring(at, end), other.substring(otherAt, otherEnd));
            if (order != 0) {
                return order;
            }
            at = end;
            otherAt = otherEnd;
        }
        boolean more = at < one.length();
        boolean otherMore = otherAt < other.length();
        return more == otherMore ? one.compareTo(other) : Boolean.compare(more, otherMore);
    }

    /** Where the digits, or what is no digit, come to an end. */
    private static int endOfRun(String text, int from) {
        boolean digits = isDigit(text.charAt(from));
        int end = from + 1;
        while (end < text.length() && isDigit(text.charAt(end)) == digits) {
            end++;
        }
        return end;
    }

    private static int runs(String one, String other) {
        return isDigit(one.charAt(0)) && isDigit(other.charAt(0))
                ? numbers(one, other)
                : one.compareToIgnoreCase(other);
    }

    /** By value, however many digits there are. */
    private static int numbers(String one, String other) {
        String digits = withoutZeros(one);
        String others = withoutZeros(other);
        return digits.length() == others.length()
                ? digits.compareTo(others)
                : Integer.compare(digits.length(), others.length());
    }

    private static String withoutZeros(String digits) {
        int from = 0;
        while (from < digits.length() - 1 && digits.charAt(from) == '0') {
            from++;
        }
        return digits.substring(from);
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
