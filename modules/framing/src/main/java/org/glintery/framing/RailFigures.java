package org.glintery.framing;

import java.util.Optional;
import org.glintery.api.Result;
import org.glintery.api.framing.FrameFigures;
import org.glintery.api.framing.FramePlan;
import org.glintery.api.framing.FramePlan.Decision;
import org.glintery.api.framing.Moulding;
import org.glintery.planning.FrameSums;
import org.glintery.planning.Glazing;
import org.openide.util.NbBundle.Messages;

/** The sums of a frame plan for one size of artwork. Pure; any thread. */
final class RailFigures {

    private static final double UM_A_MM = 1_000;
    private static final double G_A_KG = 1_000;
    private static final int CUTS_OF_FOUR = 4;
    private static final int CUTS_OF_TWO = 2;

    private final Artwork artwork;
    private final FramePlan plan;

    RailFigures(Artwork artwork, FramePlan plan) {
        this.artwork = artwork;
        this.plan = plan;
    }

    @Messages("RailFigures.noMoulding=The moulding is not known yet. Tell the width of its face and of its lip.")
    Result<FrameFigures> figures() {
        boolean mitred = isFrame();
        if (mitred && plan.moulding().isEmpty()) {
            return Result.refused("no-moulding", Bundle.RailFigures_noMoulding());
        }
        return Result.ok(mitred ? mitred(plan.moulding().get()) : straight());
    }

    /** What is not decided yet is told as if it were to be framed. */
    private boolean isFrame() {
        return plan.decision() == Decision.FRAMED || plan.decision() == Decision.NOT_DECIDED;
    }

    private FrameFigures mitred(Moulding moulding) {
        FrameSums sums = new FrameSums(
                artwork.widthUm(),
                artwork.heightUm(),
                Artwork.um(plan.allowanceMm()),
                Artwork.um(moulding.widthMm()),
                Artwork.um(moulding.lipMm()));
        return figures(sums.widthRailUm(), sums.heightRailUm(), sums.mouldingLengthUm(Artwork.um(plan.kerfMm())));
    }

    /** Stretcher bars are as long as the canvas they carry; a hanger has one lath above and one below. */
    private FrameFigures straight() {
        long kerf = Artwork.um(plan.kerfMm());
        long width = artwork.widthUm();
        long height = artwork.heightUm();
        return switch (plan.decision()) {
            case STRETCHED -> figures(width, height, 2 * (width + height) + CUTS_OF_FOUR * kerf);
            case HANGER -> figures(width, 0, 2 * width + CUTS_OF_TWO * kerf);
            default -> figures(0, 0, 0);
        };
    }

    private FrameFigures figures(long railWidthUm, long railHeightUm, long lengthUm) {
        return new FrameFigures(
                Artwork.mm(artwork.widthUm()),
                Artwork.mm(artwork.heightUm()),
                Artwork.mm(railWidthUm),
                Artwork.mm(railHeightUm),
                Artwork.mm(lengthUm),
                new FrameSums(artwork.widthUm(), artwork.heightUm(), 0, 0, 0).unitedInches(),
                glazingMassG(),
                ReadyMadeWords.fitting(artwork));
    }

    /**
     * Glazing is cut to the size of the artwork: the play of the rebate is its play too. Only a frame holds any; what a plan
     * tells of it stays for when it is to be framed after all.
     */
    private Optional<Double> glazingMassG() {
        if (!isFrame()) {
            return Optional.empty();
        }
        Optional<Glazing> glazing = switch (plan.glazing().material()) {
            case NONE -> Optional.empty();
            case GLASS -> Optional.of(Glazing.GLASS);
            case ACRYLIC -> Optional.of(Glazing.ACRYLIC);
        };
        long thicknessUm = Math.round(plan.glazing().thicknessMm() * UM_A_MM);
        return glazing.map(g -> g.massKg(artwork.widthUm(), artwork.heightUm(), thicknessUm) * G_A_KG);
    }
}
