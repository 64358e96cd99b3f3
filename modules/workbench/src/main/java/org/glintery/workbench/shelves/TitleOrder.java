package org.glintery.workbench.shelves;

import java.math.BigInteger;
import java.util.Comparator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Titles as people sort them: without regard to capitals, and numbers by their value, 9 before 10. Pure. */
final class TitleOrder implements Comparator<String> {
    private static final Pattern RUN = Pattern.compile("\\d+|\\D+");

    @Override
    public int compare(String one, String other) {
        Matcher a = RUN.matcher(one);
        Matcher b = RUN.matcher(other);
        while (true) {
            boolean more = a.find();
            boolean otherMore = b.find();
            if (!more || !otherMore) {
                return more == otherMore ? one.compareTo(other) : Boolean.compare(more, otherMore);
            }
            int order = runs(a.group(), b.group());
            if (order != 0) {
                return order;
            }
        }
    }

    private static int runs(String one, String other) {
        return isNumber(one) && isNumber(other)
                ? new BigInteger(one).compareTo(new BigInteger(other))
                : one.compareToIgnoreCase(other);
    }

    private static boolean isNumber(String run) {
        return run.charAt(0) >= '0' && run.charAt(0) <= '9';
    }
}
