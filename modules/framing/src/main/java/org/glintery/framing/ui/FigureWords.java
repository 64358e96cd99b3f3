package org.glintery.framing.ui;

import java.util.StringJoiner;
import java.util.stream.Collectors;
import org.glintery.api.framing.FrameFigures;
import org.glintery.api.framing.FramePlan.Decision;
import org.openide.util.NbBundle.Messages;

/** What a frame plan comes to, in words. Pure. */
final class FigureWords {

    private static final int READY_MADE_SHOWN = 2;

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
        StringJoiner words = new StringJoiner(" ");
        if (figures.lengthMm() > 0) {
            String width = Millimetres.words(figures.railWidthMm());
            words.add(
                    figures.railHeightMm() > 0
                            ? Bundle.FigureWords_four(width, Millimetres.words(figures.railHeightMm()))
                            : Bundle.FigureWords_two(width));
            words.add(Bundle.FigureWords_length(Millimetres.words(figures.lengthMm())));
        }
        figures.glazingMassG()
                .ifPresent(mass -> words.add(Bundle.FigureWords_glazing(String.valueOf(Math.round(mass)))));
        if (decision == Decision.FRAMED && !figures.readyMade().isEmpty()) {
            words.add(Bundle.FigureWords_readyMade(
                    figures.readyMade().stream().limit(READY_MADE_SHOWN).collect(Collectors.joining("; "))));
        }
        return words.toString();
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
