package org.glintery.api.framing;

import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Stable;
import org.glintery.api.time.About;
import org.glintery.api.workshop.DocumentType;

/**
 * A framing decision; the document has the piece's id. "Not framed" is an answer.
 *
 * @param artworkWidthMm what goes into the frame, across; absent: the drilled area
 * @param allowanceMm the total play a dimension
 * @param kerfMm what one saw cut takes
 * @param livesAt where the piece is or will be, in words
 * @param place the keeping place, where it is one
 */
@Stable
public record FramePlan(
        Decision decision,
        Optional<Double> artworkWidthMm,
        Optional<Double> artworkHeightMm,
        Optional<Moulding> moulding,
        double allowanceMm,
        double kerfMm,
        Glazing glazing,
        String livesAt,
        Optional<UUID> place,
        Optional<About> decidedOn,
        String notes) {
    public static final DocumentType<FramePlan> TYPE = DocumentType.of("framing", "plan", FramePlan.class);

    /** Common practice, no published source: 1/8 in, 3.2 mm, in all a dimension. */
    public static final double USUAL_ALLOWANCE_MM = 3.2;

    /** What one cut of a mitre saw takes. Common practice, no published source. */
    public static final double USUAL_KERF_MM = 3.0;

    /** What was decided. */
    public enum Decision {
        NOT_DECIDED,
        NOT_FRAMED,
        FRAMED,
        STRETCHED,
        ON_BOARD,
        HANGER,
        SLEEVE
    }

    /** What lies in front of the drills. */
    public enum Glazing {
        NONE,
        GLASS_2_MM,
        ACRYLIC_2_MM
    }

    /** The same plan for another way of framing; an empty moulding takes it out. */
    public FramePlan with(Decision newDecision, Optional<Moulding> newMoulding) {
        return new FramePlan(
                newDecision,
                artworkWidthMm,
                artworkHeightMm,
                newMoulding,
                allowanceMm,
                kerfMm,
                glazing,
                livesAt,
                place,
                decidedOn,
                notes);
    }

    public static FramePlan decided(Decision decision, String livesAt) {
        return new FramePlan(
                decision,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                USUAL_ALLOWANCE_MM,
                USUAL_KERF_MM,
                Glazing.NONE,
                livesAt,
                Optional.empty(),
                Optional.empty(),
                "");
    }
}
