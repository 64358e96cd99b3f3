package org.glintery.stash;

import java.util.List;
import org.glintery.api.ledger.Amount;
import org.glintery.api.stash.LegendLine;

/** Makes drills of bags, where a legend counts bags only. */
public final class BagSize {

    private BagSize() {}

    /** The amount of one line: as told, else by its bags, else not known. */
    static Amount amount(LegendLine line, int drillsPerBag) {
        if (line.supplied().known() || line.bags().isEmpty()) {
            return line.supplied();
        }
        int bags = line.bags().get();
        return Amount.inBags((long) bags * drillsPerBag, bags);
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
