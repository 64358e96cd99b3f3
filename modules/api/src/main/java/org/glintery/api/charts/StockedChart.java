package org.glintery.api.charts;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.glintery.api.Preview;

/**
 * A chart that was made from what is in the house.
 *
 * @param gap without shading: the mean difference of a cell is above the least possible by this share at most, which was
 *     proven and checked; empty for other shadings, of which that is not known
 * @param toBuy by code, the most first: the fewest drills more with which the mean cell of a chart without shading is
 *     within half a CIEDE2000 of what it would be with any drills of the card
 */
@Preview(since = "1.0")
public record StockedChart(MadeChart made, Optional<Double> gap, Map<String, Long> toBuy) {

    public StockedChart {
        toBuy = Collections.unmodifiableMap(new LinkedHashMap<>(toBuy));
    }
}
