package org.glintery.charts;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.glintery.api.Result;
import org.glintery.api.charts.ChartRequest;
import org.glintery.api.ledger.Balance;
import org.openide.util.NbBundle.Messages;

/**
 * The colours of which there are drills in the house.
 *
 * @param counts by colour, each at most as many as any chart has cells
 */
@Messages({
    "StockedColours.none=No drill of the card is in the house. Nothing was made.",
    "# {0} - code",
    "StockedColours.pinnedNotThere=''{0}'' is to be used in any case, but none is in the house. Nothing was made.",
    "# {0} - cells",
    "# {1} - drills",
    "# {2} - how many are missing",
    "StockedColours.notEnough=The chart has {0} cells, but of its colours only {1} drills are in the house. Nothing was made; "
            + "make the chart smaller, allow more colours, or fetch {2} more."
})
record StockedColours(List<CardColour> colours, int[] counts) {

    /** Of the card's usable colours. @param inTheHouse by code */
    static Result<List<CardColour>> of(ChartRequest request, List<CardColour> card, Map<String, Long> inTheHouse) {
        List<CardColour> there = card.stream()
                .filter(colour -> inTheHouse.getOrDefault(colour.code(), 0L) > 0)
                .toList();
        Optional<String> missing = request.pinned().stream()
                .filter(code -> inTheHouse.getOrDefault(code, 0L) <= 0)
                .findFirst();
        if (missing.isPresent()) {
            return Result.refused("pinned-not-there", Bundle.StockedColours_pinnedNotThere(missing.get()));
        }
        return there.isEmpty() ? Result.refused("not-enough-drills", Bundle.StockedColours_none()) : Result.ok(there);
    }

    /** Those chosen for a chart; refused when there are too few drills for its cells. */
    static Result<StockedColours> chosen(List<CardColour> colours, Map<String, Long> inTheHouse, int cells) {
        long there = colours.stream()
                .mapToLong(colour -> inTheHouse.get(colour.code()))
                .reduce(0, StockedColours::sum);
        if (there < cells) {
            return Result.refused(
                    "not-enough-drills",
                    Bundle.StockedColours_notEnough(
                            Balance.grouped(cells), Balance.grouped(there), Balance.grouped(cells - there)));
        }
        int[] counts = colours.stream()
                .mapToInt(colour -> (int) Math.min(cells, inTheHouse.get(colour.code())))
                .toArray();
        return Result.ok(new StockedColours(colours, counts));
    }

    /** So many drills are enough for anything: no overflow. */
    private static long sum(long one, long other) {
        return Math.min(Integer.MAX_VALUE, one) + Math.min(Integer.MAX_VALUE, other);
    }
}
