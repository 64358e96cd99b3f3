package org.glintery.framing.ui;

import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.framing.FramePlan.Decision;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.glintery.framing.Artwork;
import org.openide.util.NbBundle.Messages;

/**
 * A piece that can be tried on the Framing bench. Pure.
 *
 * @param sized whether its size is known, so that anything can be drawn
 */
record BenchChoice(UUID piece, String title, boolean sized) {

    /**
     * Pieces of a known size first; among these made ones that nothing was decided for, other made ones, then those
     * being made; by title.
     */
    static List<BenchChoice> of(View view) {
        return view.all(Piece.TYPE).stream()
                .filter(stored -> canHang(stored.value().standing()))
                .sorted(Comparator.<Stored<Piece>, Boolean>comparing(stored -> !isSized(view, stored.id()))
                        .thenComparing(stored -> stored.value().standing() != Standing.MADE)
                        .thenComparing(
                                stored -> PlanEdits.planOf(view, stored.id()).decision() != Decision.NOT_DECIDED)
                        .thenComparing(stored -> stored.value().title(), String.CASE_INSENSITIVE_ORDER))
                .map(stored -> new BenchChoice(stored.id(), stored.value().title(), isSized(view, stored.id())))
                .toList();
    }

    @Messages({"# {0} - title", "BenchChoice.noSize={0} (size not known yet)"})
    String words() {
        return sized ? title : Bundle.BenchChoice_noSize(title);
    }

    private static boolean isSized(View view, UUID piece) {
        return Artwork.of(view, piece, PlanEdits.planOf(view, piece)) instanceof Result.Ok<Artwork>;
    }

    private static boolean canHang(Standing standing) {
        return standing == Standing.MADE || standing == Standing.ON_THE_BENCH || standing == Standing.RESTING;
    }
}
