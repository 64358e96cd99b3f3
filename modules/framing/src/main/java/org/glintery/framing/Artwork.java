package org.glintery.framing;

import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.framing.FramePlan;
import org.glintery.api.stash.Canvas;
import org.glintery.api.stash.Piece;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/** What goes into the frame, in whole micrometres. */
public record Artwork(long widthUm, long heightUm) {

    private static final double UM_A_MM = 1_000;

    static long um(double mm) {
        return Math.round(mm * UM_A_MM);
    }

    static double mm(long um) {
        return um / UM_A_MM;
    }

    /** As the plan says, else the drilled area of the piece. */
    @Messages({
        "Artwork.noPiece=That piece is no longer in the workshop. Nothing was changed.",
        "Artwork.noSize=The size is not known yet. Tell the width and height of what goes into the frame, or of the drilled area."
    })
    public static Result<Artwork> of(View view, UUID piece, FramePlan plan) {
        Optional<Stored<Piece>> stored = view.find(Piece.TYPE, piece);
        if (stored.isEmpty()) {
            return Result.refused("no-piece", Bundle.Artwork_noPiece());
        }
        Canvas canvas = stored.get().value().canvas();
        Optional<Double> width = plan.artworkWidthMm().or(canvas::drilledWidthMm);
        Optional<Double> height = plan.artworkHeightMm().or(canvas::drilledHeightMm);
        if (width.isEmpty() || height.isEmpty() || um(width.get()) <= 0 || um(height.get()) <= 0) {
            return Result.refused("no-size", Bundle.Artwork_noSize());
        }
        return Result.ok(new Artwork(um(width.get()), um(height.get())));
    }
}
