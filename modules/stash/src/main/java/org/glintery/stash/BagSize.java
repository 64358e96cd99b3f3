package org.glintery.stash;

import java.util.List;
import java.util.Optional;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Amount.Basis;
import org.glintery.api.stash.LegendLine;

/** Makes drills of bags, where a legend counts bags only. */
public final class BagSize {

    /**
     * How much one bag differs from what its source says, as one standard uncertainty in parts of a bag. Common
     * practice, no published source.
     */
    private static final double SPREAD = 0.05;

    private BagSize() {}

    /** The amount of one line: as told, else by its bags, else not known. */
    static Amount amount(LegendLine line, int drillsPerBag) {
        if (line.supplied().known() || line.bags().isEmpty()) {
            return line.supplied();
        }
        int bags = line.bags().get();
        long spread = Math.round(Math.sqrt(bags) * SPREAD * drillsPerBag);
        return new Amount(Basis.BY_BAG, Optional.of((long) bags * drillsPerBag), spread);
    }

    /** The lines with their amounts by a bag size that was told for just this kit. */
    public static List<LegendLine> told(List<LegendLine> lines, int drillsPerBag) {
        return lines.stream()
                .map(line -> new LegendLine(
                        line.symbol(),
                        line.drill(),
                        line.needed(),
                        amount(line, drillsPerBag),
                        line.bags(),
                        line.extras()))
                .toList();
    }
}
