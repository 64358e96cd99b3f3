package org.glintery.stash.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.glintery.api.ledger.Balance;
import org.glintery.api.stash.LineSupply;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.stash.Stash;
import org.glintery.api.workshop.View;

/**
 * What runs short for the pieces that are being made. Immutable; made without Swing.
 *
 * @param lines the worst first
 */
record Shortages(List<Short> lines) {

    private static final Set<Standing> BEING_MADE = Set.of(Standing.ON_THE_BENCH, Standing.RESTING);

    /** A line of a piece's legend for which drills are missing. */
    record Short(UUID piece, String title, String symbol, String code, Balance missing) {}

    Shortages {
        lines = List.copyOf(lines);
    }

    static Shortages of(View view, Stash stash) {
        List<Short> all = new ArrayList<>();
        view.all(Piece.TYPE).stream()
                .filter(piece -> BEING_MADE.contains(piece.value().standing()))
                .forEach(piece -> stash.supplies(view, piece.id()).stream()
                        .filter(supply -> supply.missing().orElse(Balance.ZERO).count() > 0)
                        .forEach(supply -> all.add(of(piece.id(), piece.value().title(), supply))));
        all.sort((a, b) -> Long.compare(b.missing().count(), a.missing().count()));
        return new Shortages(all);
    }

    private static Short of(UUID piece, String title, LineSupply supply) {
        return new Short(
                piece,
                title,
                supply.line().symbol(),
                supply.line().drill().code(),
                supply.missing().orElseThrow());
    }
}
