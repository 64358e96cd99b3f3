package org.glintery.framing.ui;

import java.math.BigDecimal;
import org.glintery.api.framing.FramePlan.Decision;
import org.glintery.api.framing.FramePlan.Glazing;
import org.openide.util.NbBundle.Messages;

/** Decisions in words, and what they rule out. Pure. */
final class DecisionWords {

    private DecisionWords() {}

    @Messages({
        "DecisionWords.notDecided=Not decided yet",
        "DecisionWords.notFramed=Not framed",
        "DecisionWords.framed=In a frame",
        "DecisionWords.stretched=Stretched on bars",
        "DecisionWords.onBoard=On a board",
        "DecisionWords.hanger=Between laths",
        "DecisionWords.sleeve=In a sleeve"
    })
    static String of(Decision decision) {
        return switch (decision) {
            case NOT_DECIDED -> Bundle.DecisionWords_notDecided();
            case NOT_FRAMED -> Bundle.DecisionWords_notFramed();
            case FRAMED -> Bundle.DecisionWords_framed();
            case STRETCHED -> Bundle.DecisionWords_stretched();
            case ON_BOARD -> Bundle.DecisionWords_onBoard();
            case HANGER -> Bundle.DecisionWords_hanger();
            case SLEEVE -> Bundle.DecisionWords_sleeve();
        };
    }

    @Messages({
        "DecisionWords.none=None",
        "# {0} - thickness in mm",
        "DecisionWords.glass=Glass, {0} mm",
        "# {0} - thickness in mm",
        "DecisionWords.acrylic=Acrylic, {0} mm"
    })
    static String of(Glazing glazing) {
        String mm =
                BigDecimal.valueOf(glazing.thicknessMm()).stripTrailingZeros().toPlainString();
        return switch (glazing.material()) {
            case NONE -> Bundle.DecisionWords_none();
            case GLASS -> Bundle.DecisionWords_glass(mm);
            case ACRYLIC -> Bundle.DecisionWords_acrylic(mm);
        };
    }

    /** What a step can't be taken back from, and what to be careful of; empty where nothing is done to the piece. */
    @Messages({
        "DecisionWords.cautionFramed=Once the cloth is trimmed it can not be stretched any more: leave it whole if in"
                + " doubt. Saws, knives and glass cut; wall fixings have to carry the weight.",
        "DecisionWords.cautionStretched=Folding and stapling leave marks, and drills along the fold can pop. It needs"
                + " cloth round the drills: leave it whole if in doubt.",
        "DecisionWords.cautionOnBoard=What is glued to a board can not be rolled or stretched again: leave it whole if"
                + " in doubt. Glues and sprays: fresh air, gloves, the product's safety sheet and your local rules.",
        "DecisionWords.cautionHanger=Laths that clamp leave the piece whole; glued ones do not. Keep it out of sun,"
                + " damp and heat, which loosen the adhesive."
    })
    static String caution(Decision decision) {
        return switch (decision) {
            case FRAMED -> Bundle.DecisionWords_cautionFramed();
            case STRETCHED -> Bundle.DecisionWords_cautionStretched();
            case ON_BOARD -> Bundle.DecisionWords_cautionOnBoard();
            case HANGER -> Bundle.DecisionWords_cautionHanger();
            default -> "";
        };
    }
}
