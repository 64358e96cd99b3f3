package org.glintery.exchange.csv;

/**
 * Keeps spreadsheets from running a cell as a formula: text that begins with {@code = + - @}, a tab, a line end or an
 * apostrophe gets an apostrophe before it, which {@link #bare} takes away again. OWASP, "CSV injection".
 */
public final class FormulaGuard {
    private static final String DANGEROUS = "=+-@\t\r\n'";

    private FormulaGuard() {}

    public static String guarded(String text) {
        return !text.isEmpty() && DANGEROUS.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }

    /** The inverse of {@link #guarded}. */
    public static String bare(String cell) {
        return cell.startsWith("'") ? cell.substring(1) : cell;
    }
}
