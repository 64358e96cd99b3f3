package org.glintery.stash;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.ledger.Amount;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.Piece;
import org.glintery.api.workshop.View;

/** Makes drills of bags, where a legend counts bags only. */
public final class BagSize {

    private BagSize() {}

    /** What a bag of a piece holds: as when its supplies were booked, else as its kit's source says now. */
    public static int of(View view, UUID piece) {
        Optional<String> source = view.find(Piece.TYPE, piece)
                .flatMap(stored -> stored.value().kit())
                .flatMap(kit -> view.find(Kit.TYPE, kit))
                .flatMap(stored -> stored.value().source());
        return SuppliesBooked.drillsPerBag(view, piece, source);
    }

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
