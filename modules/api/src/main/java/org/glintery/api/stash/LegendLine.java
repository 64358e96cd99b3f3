package org.glintery.api.stash;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.glintery.api.PlainText;
import org.glintery.api.Stable;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Drill;

/**
 * One line of a legend: a symbol stands for a drill. The drill's colour is with the card.
 *
 * @param needed drills the chart asks for; empty when not known
 * @param supplied what the kit holds of it; unknown until told
 * @param bags how many bags were supplied, where the legend says so
 * @param extras further columns of an imported legend, by their header
 */
@Stable
public record LegendLine(
        String symbol,
        Drill drill,
        Optional<Long> needed,
        Amount supplied,
        Optional<Integer> bags,
        Map<String, String> extras) {
    public LegendLine {
        symbol = PlainText.line(symbol);
        Map<String, String> clean = new LinkedHashMap<>();
        extras.forEach((header, value) -> clean.putIfAbsent(PlainText.line(header), PlainText.lines(value)));
        extras = Collections.unmodifiableMap(clean);
    }
}
