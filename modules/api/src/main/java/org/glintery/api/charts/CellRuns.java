package org.glintery.api.charts;

import java.util.BitSet;

/**
 * Rows of cells as text that people can read: {@code 3*12 - 0 7*2} is twelve cells of line 3, one without a drill, one of
 * line 0 and two of line 7; {@code 4 10-32} are the columns 4 and 10 to 32. Pure; any thread.
 */
final class CellRuns {
    private static final char BARE = '-';
    private static final char TIMES = '*';
    private static final char TO = '-';

    /** Hears what a text says, piece by piece. */
    interface Hearer {
        void heard(int first, int second);
    }

    private CellRuns() {}

    static String ofLines(short[] cells, int from, int to) {
        StringBuilder text = new StringBuilder();
        int start = from;
        for (int cell = from + 1; cell <= to; cell++) {
            if (cell == to || cells[cell] != cells[start]) {
                part(text);
                if (cells[start] < 0) {
                    text.append(BARE);
                } else {
                    text.append(cells[start]);
                }
                if (cell - start > 1) {
                    text.append(TIMES).append(cell - start);
                }
                start = cell;
            }
        }
        return text.toString();
    }

    /** @throws IllegalArgumentException when it is not such a text */
    static void readLines(String text, Hearer lineAndCount) {
        Scan scan = new Scan(text);
        while (scan.more()) {
            int line = scan.takes(BARE) ? Chart.NO_DRILL : scan.number(Chart.MOST_LINES - 1);
            lineAndCount.heard(line, scan.takes(TIMES) ? scan.number(Grid.MOST_CELLS) : 1);
            scan.end();
        }
    }

    /** @param from the index of the row's first cell, which is column 0 */
    static String ofColumns(BitSet cells, int from, int to) {
        StringBuilder text = new StringBuilder();
        int first = cells.nextSetBit(from);
        while (first >= 0 && first < to) {
            int end = Math.min(to, cells.nextClearBit(first));
            part(text);
            text.append(first - from);
            if (end - first > 1) {
                text.append(TO).append(end - 1 - from);
            }
            first = cells.nextSetBit(end);
        }
        return text.toString();
    }

    /** @throws IllegalArgumentException when it is not such a text */
    static void readColumns(String text, Hearer firstAndLast) {
        Scan scan = new Scan(text);
        while (scan.more()) {
            int first = scan.number(Grid.MOST_CELLS);
            firstAndLast.heard(first, scan.takes(TO) ? scan.number(Grid.MOST_CELLS) : first);
            scan.end();
        }
    }

    private static void part(StringBuilder text) {
        if (text.length() > 0) {
            text.append(' ');
        }
    }

    /** Goes along a text. */
    private static final class Scan {
        private final String text;
        private int at;

        Scan(String text) {
            this.text = text;
        }

        boolean more() {
            return at < text.length();
        }

        boolean takes(char sign) {
            boolean there = more() && text.charAt(at) == sign;
            at += there ? 1 : 0;
            return there;
        }

        int number(int most) {
            int number = 0;
            int start = at;
            while (more() && text.charAt(at) >= '0' && text.charAt(at) <= '9' && number <= most) {
                number = 10 * number + text.charAt(at) - '0';
                at++;
            }
            if (at == start || number > most) {
                throw wrong();
            }
            return number;
        }

        /** A blank, with something behind it, or the end. */
        void end() {
            if (more() && (!takes(' ') || !more())) {
                throw wrong();
            }
        }

        private IllegalArgumentException wrong() {
            return new IllegalArgumentException(
                    "not a row of cells at sign " + (at + 1) + ": " + text.substring(0, Math.min(text.length(), 80)));
        }
    }
}
