package org.glintery.api.verb;

import java.util.ArrayList;
import java.util.List;
import org.glintery.api.Preview;

/** Rows of text in aligned columns, for people to read. Not safe for use by several threads. */
@Preview(since = "1.0")
public final class TextTable {

    private final List<List<String>> rows = new ArrayList<>();

    public TextTable(String... headings) {
        rows.add(List.of(headings));
    }

    /** Adds a row; cells that hold only figures, signs and blanks are set to the right. */
    public TextTable row(Object... cells) {
        List<String> row = new ArrayList<>();
        for (Object cell : cells) {
            row.add(String.valueOf(cell));
        }
        rows.add(row);
        return this;
    }

    public boolean isEmpty() {
        return rows.size() == 1;
    }

    /** The rows, without a line break after the last. */
    @Override
    public String toString() {
        int columns = rows.stream().mapToInt(List::size).max().orElse(0);
        int[] widths = new int[columns];
        for (List<String> row : rows) {
            for (int c = 0; c < row.size(); c++) {
                widths[c] = Math.max(widths[c], length(row.get(c)));
            }
        }
        List<String> lines = new ArrayList<>();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int c = 0; c < row.size(); c++) {
                String cell = row.get(c);
                String blanks = " ".repeat(widths[c] - length(cell));
                line.append(isFigure(cell) ? blanks + cell : cell + blanks).append("  ");
            }
            lines.add(line.toString().stripTrailing());
        }
        return String.join("\n", lines);
    }

    private static int length(String text) {
        return text.codePointCount(0, text.length());
    }

    private static boolean isFigure(String text) {
        return !text.isEmpty()
                && text.codePoints().allMatch(c -> Character.isDigit(c) || " \u2009.,+-%".indexOf(c) >= 0);
    }
}
