package org.glintery.api.activework;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.glintery.api.PlainText;
import org.glintery.api.Stable;

/**
 * How much was laid in one sitting, as the maker tells it: any of these, or none.
 *
 * @param percent of the whole piece, laid in this sitting, 0 to 100
 * @param bySymbol drills by legend symbol: only these are booked in the ledger
 */
@Stable
public record Laid(
        Optional<Long> drills, Optional<Double> percent, Optional<Integer> sections, Map<String, Long> bySymbol) {
    public static final Laid NOT_SAID = new Laid(Optional.empty(), Optional.empty(), Optional.empty(), Map.of());

    public Laid {
        Map<String, Long> clean = new LinkedHashMap<>();
        bySymbol.forEach((symbol, count) -> clean.merge(PlainText.line(symbol), count, Long::sum));
        bySymbol = Collections.unmodifiableMap(clean);
    }

    public static Laid drills(long drills) {
        return new Laid(Optional.of(drills), Optional.empty(), Optional.empty(), Map.of());
    }

    public static Laid percent(double percent) {
        return new Laid(Optional.empty(), Optional.of(percent), Optional.empty(), Map.of());
    }

    public static Laid sections(int sections) {
        return new Laid(Optional.empty(), Optional.empty(), Optional.of(sections), Map.of());
    }
}
