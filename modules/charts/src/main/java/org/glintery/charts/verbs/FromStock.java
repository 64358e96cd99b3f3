package org.glintery.charts.verbs;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.glintery.api.charts.StockedChart;
import org.glintery.api.ledger.Balance;
import org.openide.util.NbBundle.Messages;

/**
 * What comes with a chart from what is in the house.
 *
 * @param gap without shading: by which share the mean cell is worse than the best at most
 * @param toBuy the fewest drills more to come near to a chart of any drills, by code
 */
@Messages({
    "FromStock.kept=Made of what is in the house; no drill is laid oftener than it is there.",
    "# {0} - percent",
    "FromStock.gap=No other way to share these drills out is better by more than {0} % of its mean difference.",
    "FromStock.nothing=More drills would hardly better it: without shading it is as good as with all of the card.",
    "# {0} - how many",
    "# {1} - the same in figures",
    "# {2} - which",
    "FromStock.toBuy=To come near to a chart of any drills of the card, {0,choice,1#one drill more is|1<{1} drills more are} "
            + "enough without shading: {2}."
})
record FromStock(Optional<Double> gap, long drillsToBuy, List<Wanted> toBuy) {

    /** Drills of a code. */
    record Wanted(String code, long drills) {}

    private static final int MOST_NAMED = 12;

    static FromStock of(StockedChart chart) {
        List<Wanted> toBuy = chart.toBuy().entrySet().stream()
                .map(entry -> new Wanted(entry.getKey(), entry.getValue()))
                .toList();
        return new FromStock(
                chart.gap(), toBuy.stream().mapToLong(Wanted::drills).sum(), toBuy);
    }

    /** For people. */
    String text() {
        String proven =
                gap.map(share -> "\n" + Bundle.FromStock_gap(percent(share))).orElse("");
        return Bundle.FromStock_kept() + proven + "\n"
                + (toBuy.isEmpty()
                        ? Bundle.FromStock_nothing()
                        : Bundle.FromStock_toBuy(drillsToBuy, Balance.grouped(drillsToBuy), named()));
    }

    /** Rounded up, so that it holds. */
    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.2f", Math.ceil(1e4 * share) / 100);
    }

    private String named() {
        String first = toBuy.stream()
                .limit(MOST_NAMED)
                .map(wanted -> Balance.grouped(wanted.drills()) + " " + wanted.code())
                .collect(Collectors.joining(", "));
        return toBuy.size() > MOST_NAMED ? first + ", …" : first;
    }
}
