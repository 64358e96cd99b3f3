package org.glintery.stash;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Amount.Basis;
import org.glintery.api.ledger.Drill;
import org.glintery.api.stash.LegendLine;

/**
 * What a legend says was supplied of one drill, over all its lines.
 *
 * @param basis of the amount; rough when the lines differ
 * @param variance in drills squared
 * @param uncounted whether any line is silent about its amount
 */
record SuppliedDrills(Basis basis, long count, long variance, boolean uncounted) {

    static final SuppliedDrills NONE = new SuppliedDrills(Basis.COUNTED, 0, 0, false);

    static Map<Drill, SuppliedDrills> of(List<LegendLine> lines, int drillsPerBag) {
        Map<Drill, SuppliedDrills> all = new LinkedHashMap<>();
        for (LegendLine line : lines) {
            all.merge(line.drill(), of(BagSize.amount(line, drillsPerBag)), SuppliedDrills::plus);
        }
        return all;
    }

    /** What came on top of an earlier telling; none when it did not grow. */
    Optional<Amount> beyond(SuppliedDrills before) {
        long more = count - before.count;
        if (more <= 0) {
            return Optional.empty();
        }
        long spread = Math.round(Math.sqrt(Math.max(0, variance - before.variance)));
        return Optional.of(new Amount(basis, Optional.of(more), spread));
    }

    private static SuppliedDrills of(Amount amount) {
        return amount.count()
                .map(count ->
                        new SuppliedDrills(amount.basis(), count, amount.uncertainty() * amount.uncertainty(), false))
                .orElse(new SuppliedDrills(Basis.COUNTED, 0, 0, true));
    }

    private SuppliedDrills plus(SuppliedDrills other) {
        Basis common = basis;
        if (count == 0) {
            common = other.basis;
        } else if (other.count > 0 && other.basis != basis) {
            common = Basis.ROUGH;
        }
        return new SuppliedDrills(common, count + other.count, variance + other.variance, uncounted || other.uncounted);
    }
}
