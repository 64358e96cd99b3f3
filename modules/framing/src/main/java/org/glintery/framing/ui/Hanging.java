package org.glintery.framing.ui;

import java.awt.geom.Rectangle2D;
import java.util.Optional;
import org.glintery.api.framing.FrameFigures;
import org.glintery.api.framing.FramePlan;
import org.glintery.api.framing.FramePlan.Decision;
import org.glintery.api.framing.Moulding;
import org.glintery.api.workshop.Picture;

/**
 * A piece as it will hang, in millimetres from the upper left corner of what is on the wall. Immutable; any thread.
 *
 * @param decision how it hangs
 * @param outer all that is on the wall
 * @param visible what is seen of the artwork
 * @param figures the rails that belong to it
 * @param picture of the piece
 */
record Hanging(
        Decision decision, Rectangle2D outer, Rectangle2D visible, FrameFigures figures, Optional<Picture> picture) {

    /** How high a lath of a hanger is drawn. */
    static final double LATH_MM = 18;

    /** How thick a board is drawn. */
    static final double BOARD_MM = 10;

    /** How far a sleeve stands out. */
    private static final double SLEEVE_MM = 6;

    static Hanging of(FramePlan plan, FrameFigures figures, Optional<Picture> picture) {
        double width = figures.artworkWidthMm();
        double height = figures.artworkHeightMm();
        Optional<Moulding> moulding = plan.moulding().filter(m -> plan.decision() == Decision.FRAMED);
        if (moulding.isPresent()) {
            return around(
                    plan.decision(),
                    figures,
                    picture,
                    figures.railWidthMm(),
                    figures.railHeightMm(),
                    moulding.get().widthMm());
        }
        return switch (plan.decision()) {
            case HANGER ->
                new Hanging(
                        plan.decision(),
                        new Rectangle2D.Double(0, 0, width, height + LATH_MM),
                        new Rectangle2D.Double(0, LATH_MM / 2, width, height),
                        figures,
                        picture);
            case SLEEVE ->
                around(plan.decision(), figures, picture, width + 2 * SLEEVE_MM, height + 2 * SLEEVE_MM, SLEEVE_MM);
            default -> around(plan.decision(), figures, picture, width, height, 0);
        };
    }

    private static Hanging around(
            Decision decision,
            FrameFigures figures,
            Optional<Picture> picture,
            double outerWidth,
            double outerHeight,
            double border) {
        return new Hanging(
                decision,
                new Rectangle2D.Double(0, 0, outerWidth, outerHeight),
                new Rectangle2D.Double(border, border, outerWidth - 2 * border, outerHeight - 2 * border),
                figures,
                picture);
    }

    /** Whether four mitred rails stand round it. */
    boolean isFramed() {
        return decision == Decision.FRAMED && outer.getWidth() > visible.getWidth();
    }
}
