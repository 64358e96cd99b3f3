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

    /**
     * How much one bag differs from what its source says, as one standard uncertainty in parts of a bag. Common
     * practice, no published source.
     */
    private static final double BAG_SPREAD = 0.05;

    static Map<Drill, SuppliedDrills> of(List<LegendLine> lines, int drillsPerBag) {
        Map<Drill, SuppliedDrills> all = new LinkedHashMap<>();
        for (LegendLine line : lines) {
            all.merge(line.drill(), of(amount(line, drillsPerBag)), SuppliedDrills::plus);
        }
        return all;
    }

    /** The amount of one line: as told, else by its bags, else not known. */
    static Amount amount(LegendLine line, int drillsPerBag) {
        if (line.supplied().known() || line.bags().isEmpty()) {
            return line.supplied();
        }
        int bags = line.bags().get();
        long spread = Math.round(Math.sqrt(bags) * BAG_SPREAD * drillsPerBag);
        return new Amount(Basis.BY_BAG, Optional.of((long) bags * drillsPerBag), spread);
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
        return new SuppliedDrills(
                common, count + other.count, variance + other.variance, uncounted || other.uncounted);
    }
}
