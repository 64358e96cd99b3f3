package org.glintery.stash;

import java.util.Comparator;

/** Orders codes as people do: T2 before T10. */
enum CodeOrder implements Comparator<String> {
    NATURAL;

    @Override
    public int compare(String left, String right) {
        int l = 0;
        int r = 0;
        while (l < left.length() && r < right.length()) {
            boolean bothNumbers = isDigit(left.charAt(l)) && isDigit(right.charAt(r));
            int lEnd = bothNumbers ? endOfNumber(left, l) : l + 1;
            int rEnd = bothNumbers ? endOfNumber(right, r) : r + 1;
            int order = bothNumbers
                    ? compareNumbers(left.substring(l, lEnd), right.substring(r, rEnd))
                    : Character.compare(left.charAt(l), right.charAt(r));
            if (order != 0) {
                return order;
            }
            l = lEnd;
            r = rEnd;
        }
        return Integer.compare(left.length() - l, right.length() - r);
    }

    private static int compareNumbers(String left, String right) {
        String l = left.replaceFirst("^0+(?=.)", "");
        String r = right.replaceFirst("^0+(?=.)", "");
        return l.length() != r.length() ? Integer.compare(l.length(), r.length()) : l.compareTo(r);
    }

    private static int endOfNumber(String text, int from) {
        int end = from;
        while (end < text.length() && isDigit(text.charAt(end))) {
            end++;
        }
        return end;
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
