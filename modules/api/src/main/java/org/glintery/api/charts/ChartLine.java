package org.glintery.api.charts;

import org.glintery.api.PlainText;
import org.glintery.api.Stable;

/**
 * A drill of a chart.
 *
 * @param symbol what stands for it in the cells
 * @param code of the card
 * @param hex its colour as {@code #rrggbb}, lower case
 * @param drills how many cells have it
 */
@Stable
public record ChartLine(String symbol, String code, String hex, long drills) {
    public ChartLine {
        symbol = PlainText.line(symbol);
        code = PlainText.line(code);
        hex = PlainText.line(hex);
    }
}
