package org.glintery.demo;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Drill;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.Source;
import org.glintery.api.workshop.Blob;
import org.glintery.demo.drills.DrillGrid;

/**
 * A piece with what follows from its picture.
 *
 * @param made its place among the made pieces, -1 for the others
 * @param source whom its kit came from
 * @param picture the canvas as it looks now, or what it is to become
 * @param onTheBox the design as sold, where the picture shows the canvas
 */
record PieceInMaking(
        UUID id,
        Told told,
        int made,
        String source,
        Optional<DrillGrid> grid,
        List<LegendLine> legend,
        Optional<Blob> picture,
        Optional<Blob> onTheBox) {

    long needed() {
        return legend.stream().mapToLong(line -> line.needed().orElse(0L)).sum();
    }

    /** Drills on the canvas of a piece that is not made yet. */
    long laid() {
        return told.laying().flatMap(laying -> grid.map(laying::count)).orElse(0L);
    }

    Drill drill(int line) {
        return legend.get(line).drill();
    }

    long needed(int line) {
        return legend.get(line).needed().orElseThrow();
    }

    /** What came of a line: as told, else by its bags, else not known. */
    Amount supplied(int line) {
        LegendLine value = legend.get(line);
        if (value.supplied().known() || value.bags().isEmpty()) {
            return value.supplied();
        }
        int bags = value.bags().get();
        return Amount.inBags((long) bags * Source.USUAL_DRILLS_PER_BAG, bags);
    }

    long leftOver(int line) {
        return supplied(line).count().orElseThrow() - needed(line);
    }
}
