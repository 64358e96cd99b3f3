package org.glintery.demo;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.ledger.Drill;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.workshop.Blob;

/**
 * A piece with what follows from its picture.
 *
 * @param made its place among the made pieces, -1 for the others
 * @param supplied drills that came of each legend line
 */
record PieceInMaking(
        UUID id,
        Told told,
        int made,
        Optional<DrillGrid> grid,
        List<LegendLine> legend,
        List<Long> supplied,
        List<Blob> pictures) {

    long needed() {
        return legend.stream().mapToLong(line -> line.needed().orElse(0L)).sum();
    }

    Drill drill(int line) {
        return legend.get(line).drill();
    }
}
