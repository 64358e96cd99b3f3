package org.glintery.framing.verbs;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.UUID;
import org.glintery.api.framing.FrameFigures;
import org.glintery.api.framing.FramePlan.Decision;
import org.glintery.api.framing.FramePlan.Glazing;
import org.glintery.api.framing.Moulding;
import org.glintery.api.time.About;
import org.openide.util.NbBundle.Messages;

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

    private static final String INDENT = "  ";

    @Messages({
        "# {0} - title",
        "# {1} - decision",
        "PieceFrame.recorded={0}: {1}.",
        "# {0} - title",
        "# {1} - decision",
        "PieceFrame.notRecorded={0}: {1}. Nothing was recorded.",
        "# {0} - where",
        "# {1} - keeping place",
        "PieceFrame.inPlace={0} ({1})",
        "# {0} - where",
        "PieceFrame.livesAt=Lives at: {0}"
    })
    String text() {
        StringJoiner lines = new StringJoiner("\n");
        String so = words(decision);
        lines.add(recorded ? Bundle.PieceFrame_recorded(title, so) : Bundle.PieceFrame_notRecorded(title, so));
        figures.ifPresent(f -> addFigures(lines, f));
        missing.filter(m -> decision != Decision.NOT_FRAMED).ifPresent(m -> lines.add(INDENT + m));
        String where = placeName
                .map(name -> livesAt.isBlank() ? name : Bundle.PieceFrame_inPlace(livesAt, name))
                .orElse(livesAt);
        if (!where.isBlank()) {
            lines.add(INDENT + Bundle.PieceFrame_livesAt(where));
        }
        if (!notes.isBlank()) {
            lines.add(INDENT + notes);
        }
        return lines.toString();
    }

    @Messages({
        "# {0} - width",
        "# {1} - height",
        "# {2} - width and height together in inches",
        "PieceFrame.artwork=Artwork: {0} x {1} mm, {2} united inches",
        "# {0} - length across",
        "# {1} - length down",
        "# {2} - length in all",
        "PieceFrame.fourRails=Rails: 2 of {0} mm, 2 of {1} mm; {2} mm in all, saw cuts included",
        "# {0} - length",
        "# {1} - length in all",
        "PieceFrame.twoRails=Rails: 2 of {0} mm; {1} mm in all, saw cuts included",
        "# {0} - grams",
        "PieceFrame.glazing=Glazing: {0} g",
        "# {0} - sizes",
        "PieceFrame.readyMade=Fits ready-made: {0}"
    })
    private void addFigures(StringJoiner lines, FrameFigures f) {
        lines.add(INDENT
                + Bundle.PieceFrame_artwork(
                        mm(f.artworkWidthMm()), mm(f.artworkHeightMm()), number(f.unitedInches(), 1)));
        if (f.lengthMm() > 0) {
            lines.add(INDENT
                    + (f.railHeightMm() > 0
                            ? Bundle.PieceFrame_fourRails(mm(f.railWidthMm()), mm(f.railHeightMm()), mm(f.lengthMm()))
                            : Bundle.PieceFrame_twoRails(mm(f.railWidthMm()), mm(f.lengthMm()))));
        }
        f.glazingMassG().ifPresent(mass -> lines.add(INDENT + Bundle.PieceFrame_glazing(number(mass, 0))));
        if (decision != Decision.NOT_FRAMED && !f.readyMade().isEmpty()) {
            lines.add(INDENT + Bundle.PieceFrame_readyMade(String.join("; ", f.readyMade())));
        }
    }

    @Messages({
        "PieceFrame.notDecided=not decided yet",
        "PieceFrame.notFramed=not framed",
        "PieceFrame.framed=framed",
        "PieceFrame.stretched=stretched",
        "PieceFrame.onBoard=on a board",
        "PieceFrame.hanger=hanger",
        "PieceFrame.sleeve=sleeve"
    })
    static String words(Decision decision) {
        return switch (decision) {
            case NOT_DECIDED -> Bundle.PieceFrame_notDecided();
            case NOT_FRAMED -> Bundle.PieceFrame_notFramed();
            case FRAMED -> Bundle.PieceFrame_framed();
            case STRETCHED -> Bundle.PieceFrame_stretched();
            case ON_BOARD -> Bundle.PieceFrame_onBoard();
            case HANGER -> Bundle.PieceFrame_hanger();
            case SLEEVE -> Bundle.PieceFrame_sleeve();
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
