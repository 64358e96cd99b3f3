package org.glintery.framing.ui;

import java.util.Optional;
import java.util.StringJoiner;
import org.glintery.api.framing.FrameDepth;
import org.glintery.api.framing.FrameFigures;
import org.glintery.api.framing.FramePlan.Decision;
import org.openide.util.NbBundle.Messages;

/** What a frame plan comes to, in words. Pure. */
final class FigureWords {

    private FigureWords() {}

    @Messages({
        "# {0} - across",
        "# {1} - down",
        "FigureWords.four=Two rails of {0} mm and two of {1} mm.",
        "# {0} - length",
        "FigureWords.two=Two laths of {0} mm.",
        "# {0} - length",
        "FigureWords.length={0} mm in all, saw cuts included.",
        "# {0} - grams",
        "FigureWords.glazing=The glazing weighs {0} g.",
        "# {0} - sizes",
        "FigureWords.readyMade=Ready-made it fits {0}."
    })
    static String of(Decision decision, FrameFigures figures) {
        StringJoiner words = new StringJoiner("\n");
        flat(decision, figures).ifPresent(words::add);
        if (figures.lengthMm() > 0) {
            String width = Millimetres.words(figures.railWidthMm());
            String rails = figures.railHeightMm() > 0
                    ? Bundle.FigureWords_four(width, Millimetres.words(figures.railHeightMm()))
                    : Bundle.FigureWords_two(width);
            words.add(rails + " " + Bundle.FigureWords_length(Millimetres.words(figures.lengthMm())));
        }
        figures.glazingMassG()
                .ifPresent(mass -> words.add(Bundle.FigureWords_glazing(String.valueOf(Math.round(mass)))));
        if (decision == Decision.FRAMED && !figures.readyMade().isEmpty()) {
            words.add(Bundle.FigureWords_readyMade(inShort(figures.readyMade().get(0))));
        }
        return words.toString();
    }

    /** Without the window of the mount, which stands with the figures. */
    private static String inShort(String readyMade) {
        int window = readyMade.indexOf(':');
        return window < 0 ? readyMade : readyMade.substring(0, window);
    }

    /** What needs no rails. */
    @Messages({
        "FigureWords.asItIs=It stays as it is, whole.",
        "# {0} - width",
        "# {1} - height",
        "FigureWords.board=A board of {0} x {1} mm, or larger where the cloth is folded round it.",
        "# {0} - width",
        "# {1} - height",
        "FigureWords.sleeve=A clear sleeve with a little more than {0} x {1} mm inside. The piece stays whole."
    })
    private static Optional<String> flat(Decision decision, FrameFigures figures) {
        String width = Millimetres.words(figures.artworkWidthMm());
        String height = Millimetres.words(figures.artworkHeightMm());
        return switch (decision) {
            case NOT_FRAMED -> Optional.of(Bundle.FigureWords_asItIs());
            case ON_BOARD -> Optional.of(Bundle.FigureWords_board(width, height));
            case SLEEVE -> Optional.of(Bundle.FigureWords_sleeve(width, height));
            default -> Optional.empty();
        };
    }

    @Messages({
        "# {0} - sum",
        "FigureWords.rebate=The rebate has to take {0} mm.",
        "# {0} - sum",
        "# {1} - what it has",
        "# {2} - missing",
        "FigureWords.shallow=The rebate has to take {0} mm and is {1} mm deep: {2} mm too shallow.",
        "# {0} - sum",
        "# {1} - what it has",
        "FigureWords.deep=The rebate has to take {0} mm; it is {1} mm deep.",
        "# {0} - spacer",
        "FigureWords.spacer=A spacer of {0} mm keeps the glazing off the drills.",
        "FigureWords.noSpacer=Glazing would need a spacer, so that it does not touch the drills."
    })
    static String of(FrameDepth depth) {
        String sum = Millimetres.words(depth.neededMm());
        String rebate = depth.rebateMm()
                .map(has -> depth.shortMm()
                        .map(missing ->
                                Bundle.FigureWords_shallow(sum, Millimetres.words(has), Millimetres.words(missing)))
                        .orElseGet(() -> Bundle.FigureWords_deep(sum, Millimetres.words(has))))
                .orElseGet(() -> Bundle.FigureWords_rebate(sum));
        String spacer = depth.spacerMm() > 0
                ? Bundle.FigureWords_spacer(Millimetres.words(depth.spacerMm()))
                : Bundle.FigureWords_noSpacer();
        return rebate + "\n" + spacer;
    }

    @Messages({
        "# {0} - drills",
        "# {1} - canvas",
        "# {2} - backing",
        "FigureWords.depths=In the rebate: drills {0} mm at the tallest, canvas {1} mm, backing {2} mm.",
        "# {0} - glazing",
        "# {1} - spacer",
        "FigureWords.glazed=With it glazing of {0} mm; the spacer of {1} mm stands beside the drills, so they are not counted twice.",
        "FigureWords.practice=Heights of drills are common practice; measure yours."
    })
    static String howWeKnow(FrameDepth depth) {
        String parts = Bundle.FigureWords_depths(
                Millimetres.words(depth.drillMm()),
                Millimetres.words(depth.canvasMm()),
                Millimetres.words(depth.backingMm()));
        String glazed = depth.glazingMm() > 0
                ? " "
                        + Bundle.FigureWords_glazed(
                                Millimetres.words(depth.glazingMm()), Millimetres.words(depth.spacerMm()))
                : "";
        return parts + glazed + " " + Bundle.FigureWords_practice();
    }

    @Messages({
        "# {0} - artwork width",
        "# {1} - artwork height",
        "FigureWords.artwork=The artwork is {0} x {1} mm.",
        "# {0} - inches",
        "FigureWords.united=Width and height together are {0} inches, by which the trade prices frames.",
        "# {0} - sizes",
        "FigureWords.allReadyMade=Ready-made sizes it fits, best first: {0}.",
        "FigureWords.rule=A rail is the artwork, the play, and twice what the moulding is wider than its lip; each of the four cuts takes one saw cut."
    })
    static String howWeKnow(FrameFigures figures) {
        return Bundle.FigureWords_artwork(
                        Millimetres.words(figures.artworkWidthMm()), Millimetres.words(figures.artworkHeightMm()))
                + " " + Bundle.FigureWords_united(Millimetres.words(figures.unitedInches()))
                + " " + Bundle.FigureWords_rule()
                + (figures.readyMade().isEmpty()
                        ? ""
                        : " " + Bundle.FigureWords_allReadyMade(String.join("; ", figures.readyMade())));
    }
}
