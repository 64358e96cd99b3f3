package org.glintery.stash;

import java.util.List;
import java.util.Optional;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.ledger.Amount;
import org.glintery.api.stash.LegendLine;

/** Makes drills of bags, where a legend counts bags only. */
public final class BagSize {

    private BagSize() {}

    /** The drills of one line, also where they are too many for an amount; 0 when not known. */
    static long count(LegendLine line, int drillsPerBag) {
        return line.supplied()
                .count()
                .orElseGet(() ->
                        line.bags().map(bags -> (long) bags * drillsPerBag).orElse(0L));
    }

    /** The amount of one line: as told, else by its bags, else not known. */
    static Amount amount(LegendLine line, int drillsPerBag) {
        if (line.supplied().known() || line.bags().isEmpty()) {
            return line.supplied();
        }
        int bags = line.bags().get();
        return Amount.inBags((long) bags * drillsPerBag, bags);
    }

    /**
     * The lines with their amounts by a bag size that was told for just this kit. Refused as saving the legend would be
     * where an amount can't be right.
     */
    public static Result<List<LegendLine>> told(List<LegendLine> lines, int drillsPerBag) {
        Optional<Refusal> refusal = LegendCheck.refusal(lines, drillsPerBag);
        if (refusal.isPresent()) {
            return Result.refused(refusal.get());
        }
        return Result.ok(lines.stream()
                .map(line -> new LegendLine(
                        line.symbol(),
                        line.drill(),
                        line.needed(),
                        amount(line, drillsPerBag),
                        line.bags(),
                        line.extras()))
                .toList());
    }
}
