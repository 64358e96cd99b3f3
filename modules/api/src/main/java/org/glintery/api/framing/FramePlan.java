package org.glintery.api.framing;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Json;
import org.glintery.api.PlainText;
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
    public static final DocumentType<FramePlan> TYPE =
            new DocumentType<>("framing", "plan", 2, FramePlan.class, List.of(FramePlan::fromVersion1));

    public FramePlan {
        livesAt = PlainText.line(livesAt);
        notes = PlainText.lines(notes);
    }

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

    /**
     * What lies in front of the drills.
     *
     * @param thicknessMm 0 without glazing, else more
     */
    public record Glazing(Material material, double thicknessMm) {
        public static final Glazing NONE = new Glazing(Material.NONE, 0);

        /** Common practice, no published source. */
        public static final double USUAL_THICKNESS_MM = 2;

        /** What it is made of. */
        public enum Material {
            NONE,
            GLASS,
            ACRYLIC
        }

        public Glazing {
            boolean there = material != Material.NONE;
            if (there != thicknessMm > 0 || !Double.isFinite(thicknessMm)) {
                throw new IllegalArgumentException(material + " is not " + thicknessMm + " mm thick");
            }
        }

        /** As thick as is usual. */
        public static Glazing usual(Material material) {
            return material == Material.NONE ? NONE : new Glazing(material, USUAL_THICKNESS_MM);
        }
    }

    /** Version 1 said material and thickness in one word. */
    private static Json.Obj fromVersion1(Json.Obj body) {
        String material = switch (body.text("glazing").orElse("")) {
            case "glass-2-mm" -> "glass";
            case "acrylic-2-mm" -> "acrylic";
            default -> "none";
        };
        return body.with(
                "glazing",
                Json.EMPTY
                        .with("material", new Json.Text(material))
                        .with("thicknessMm", Json.Num.of(material.equals("none") ? 0 : 2)));
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
