package org.glintery.framing.verbs;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.UUID;
import org.glintery.api.framing.FrameFigures;
import org.glintery.api.framing.FramePlan.Decision;
import org.glintery.api.framing.FramePlan.Glazing;
import org.glintery.api.framing.Moulding;
import org.glintery.api.time.About;

/**
 * How a piece will hang. Lengths in millimetres.
 *
 * @param recorded false when only the sums were asked for
 * @param placeName the keeping place in words
 * @param figures absent while a number is missing; {@code missing} then says which
 */
public record PieceFrame(
        UUID piece,
        String title,
        boolean recorded,
        Decision decision,
        Optional<Moulding> moulding,
        double allowanceMm,
        double kerfMm,
        Glazing glazing,
        String livesAt,
        Optional<UUID> place,
        Optional<String> placeName,
        Optional<About> decidedOn,
        String notes,
        Optional<FrameFigures> figures,
        Optional<String> missing,
        List<String> warnings) {

    String text() {
        StringJoiner lines = new StringJoiner("\n");
        lines.add(title + ": " + words(decision) + (recorded ? "." : ". Nothing was recorded."));
        figures.ifPresent(f -> addFigures(lines, f));
        missing.filter(m -> decision != Decision.NOT_FRAMED).ifPresent(m -> lines.add("  " + m));
        String where = placeName
                .map(name -> livesAt.isBlank() ? name : livesAt + " (" + name + ")")
                .orElse(livesAt);
        if (!where.isBlank()) {
            lines.add("  Lives at: " + where);
        }
        if (!notes.isBlank()) {
            lines.add("  " + notes);
        }
        return lines.toString();
    }

    private void addFigures(StringJoiner lines, FrameFigures f) {
        lines.add("  Artwork: " + mm(f.artworkWidthMm()) + " x " + mm(f.artworkHeightMm()) + " mm, "
                + number(f.unitedInches(), 1) + " united inches");
        if (f.lengthMm() > 0) {
            String down = f.railHeightMm() > 0 ? ", 2 of " + mm(f.railHeightMm()) + " mm" : "";
            lines.add("  Rails: 2 of " + mm(f.railWidthMm()) + " mm" + down + "; " + mm(f.lengthMm())
                    + " mm in all, saw cuts included");
        }
        f.glazingMassG().ifPresent(mass -> lines.add("  Glazing: " + number(mass, 0) + " g"));
        if (decision != Decision.NOT_FRAMED && !f.readyMade().isEmpty()) {
            lines.add("  Fits ready-made: " + String.join("; ", f.readyMade()));
        }
    }

    private static String words(Decision decision) {
        return switch (decision) {
            case NOT_DECIDED -> "not decided yet";
            default -> decision.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        };
    }

    /** To a tenth of a millimetre, which is finer than a saw cuts. */
    private static String mm(double mm) {
        return number(mm, 1);
    }

    private static String number(double number, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
