package org.glintery.charts.symbols;

import java.util.List;
import java.util.stream.IntStream;

/** Gives each line of a chart its symbol. */
public final class SymbolDealing {

    private static final String SIGNS = "ABCDEFGHJKLMNPQRSTUVWXYZabdefghkmnqrt23456789+=<>?%#&@$";

    private SymbolDealing() {}

    /** As many symbols as there are lines, each only once. */
    public static List<String> dealt(int lines) {
        return IntStream.range(0, lines).mapToObj(SymbolDealing::symbol).toList();
    }

    private static String symbol(int line) {
        String first = String.valueOf(SIGNS.charAt(line % SIGNS.length()));
        return line < SIGNS.length() ? first : first + (line / SIGNS.length());
    }
}
