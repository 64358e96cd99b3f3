package org.glintery.activework;

import java.util.Optional;
import java.util.UUID;
import org.glintery.api.activework.Laid;
import org.glintery.api.stash.Coverage;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.Piece;
import org.glintery.api.workshop.View;

/**
 * What the whole of a piece takes, and what a sitting comes to by that measure. Pure; any thread.
 *
 * @param drills from the legend, else from the cells of a canvas that is covered in full
 * @param sections as the maker divides it
 */
record Whole(Optional<Long> drills, Optional<Integer> sections) {

    private static final double PERCENT = 100;

    static Whole of(View view, UUID id, Piece piece) {
        return new Whole(
                Legend.of(view, id).needed().or(() -> cells(piece)).filter(drills -> drills > 0),
                piece.sections().filter(sections -> sections > 0));
    }

    private static Optional<Long> cells(Piece piece) {
        if (piece.coverage() != Coverage.FULL) {
            return Optional.empty();
        }
        return piece.canvas().columns().flatMap(columns -> piece.canvas().rows().map(rows -> (long) columns * rows));
    }

    static boolean saysSomething(Laid laid) {
        return toldInDrills(laid).isPresent()
                || laid.percent().isPresent()
                || laid.sections().isPresent();
    }

    /** Whether it tells sections alone, of a piece that is not divided into any: nothing follows from that. */
    boolean isOfUnknownSections(Laid laid) {
        return sections.isEmpty()
                && laid.sections().isPresent()
                && laid.percent().isEmpty()
                && toldInDrills(laid).isEmpty();
    }

    /** What was told in drills; those told by symbol may be fewer than all. */
    static Optional<Long> toldInDrills(Laid laid) {
        if (laid.bySymbol().isEmpty()) {
            return laid.drills();
        }
        long bySymbol =
                laid.bySymbol().values().stream().mapToLong(Long::longValue).sum();
        return Optional.of(Math.max(bySymbol, laid.drills().orElse(0L)));
    }

    /** In drills, where it is told so or can be worked out. */
    Optional<Double> drillsOf(Laid laid) {
        Optional<Double> told = toldInDrills(laid).map(Long::doubleValue);
        return told.or(() -> drills.flatMap(all -> toldShare(laid).map(share -> share * all)));
    }

    /** As a share of the whole, from 0 to 1 and, where the numbers say so, above. */
    Optional<Double> shareOf(Laid laid) {
        return toldInDrills(laid).isPresent()
                ? drills.map(all -> (double) toldInDrills(laid).get() / all)
                : toldShare(laid);
    }

    private Optional<Double> toldShare(Laid laid) {
        return laid.percent()
                .map(percent -> percent / PERCENT)
                .or(() -> laid.sections().flatMap(some -> sections.map(all -> (double) some / all)));
    }
}
