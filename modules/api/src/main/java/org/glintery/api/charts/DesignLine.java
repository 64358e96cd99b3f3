package org.glintery.api.charts;

import org.glintery.api.PlainText;
import org.glintery.api.Preview;
import org.glintery.api.ledger.Drill;

/**
 * A drill of a design.
 *
 * @param symbol what stands for it in the cells
 * @param hex the colour that it was chosen for, as {@code #rrggbb}, lower case; that of its card may be corrected since
 */
@Preview(since = "1.0")
public record DesignLine(String symbol, Drill drill, String hex) {
    public DesignLine {
        symbol = PlainText.line(symbol);
        hex = PlainText.line(hex);
    }
}
