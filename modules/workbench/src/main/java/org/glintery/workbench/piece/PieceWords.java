package org.glintery.workbench.piece;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.glintery.api.framing.FramePlan;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.Canvas;
import org.glintery.api.stash.Coverage;
import org.glintery.api.stash.Standing;
import org.glintery.api.time.About;
import org.openide.util.NbBundle;
import org.openide.util.NbBundle.Messages;

/** What a piece is, in words. Pure. */
public final class PieceWords {
    private static final double MM_A_CM = 10;

    private PieceWords() {}

    @Messages({
        "Standing.HOPED_FOR=Hoped for",
        "Standing.ORDERED=Ordered",
        "Standing.SHELVED=Shelved",
        "Standing.ON_THE_BENCH=On the bench",
        "Standing.RESTING=Resting",
        "Standing.MADE=Made",
        "Standing.LET_GO=Let go"
    })
    public static String standing(Standing standing) {
        return word("Standing", standing);
    }

    /** "Made, 26 February 2025" for what happened once, "Resting since March 2026" for what goes on. */
    @Messages({
        "# {0} - standing",
        "# {1} - since when",
        "Standing.since={0} since {1}",
        "# {0} - standing",
        "# {1} - when",
        "Standing.when={0}, {1}"
    })
    static String standing(Standing standing, Optional<About> since) {
        String word = standing(standing);
        return since.map(About::words)
                .map(when -> switch (standing) {
                    case ORDERED, MADE, LET_GO -> Bundle.Standing_when(word, when);
                    case HOPED_FOR, SHELVED, ON_THE_BENCH, RESTING -> Bundle.Standing_since(word, when);
                })
                .orElse(word);
    }

    @Messages({"Shape.ROUND=Round", "Shape.SQUARE=Square", "Shape.SPECIAL=Special shapes", "Shape.none=Not said"})
    public static String shape(Shape shape) {
        return shape == null ? Bundle.Shape_none() : word("Shape", shape);
    }

    @Messages({"Coverage.FULL=All of it (full)", "Coverage.PARTIAL=Part of it (partial)", "Coverage.NOT_SAID=Not said"})
    public static String coverage(Coverage coverage) {
        return word("Coverage", coverage);
    }

    @Messages({
        "Decision.NOT_DECIDED=Frame not decided",
        "Decision.NOT_FRAMED=Not framed",
        "Decision.FRAMED=In a frame",
        "Decision.STRETCHED=Stretched on bars",
        "Decision.ON_BOARD=On board",
        "Decision.HANGER=On a hanger",
        "Decision.SLEEVE=In a sleeve"
    })
    public static String frame(FramePlan.Decision decision) {
        return word("Decision", decision);
    }

    /** "35 x 45 cm", from the drilled area, else the cloth; empty when neither is known. */
    @Messages({"# {0} - width", "# {1} - height", "Size.cm={0} x {1} cm"})
    public static String size(Canvas canvas) {
        var width = canvas.drilledWidthMm().or(canvas::clothWidthMm);
        var height = canvas.drilledHeightMm().or(canvas::clothHeightMm);
        return width.isEmpty() || height.isEmpty() ? "" : Bundle.Size_cm(cm(width.get()), cm(height.get()));
    }

    /** The values with "not said" before them. */
    public static <T> List<T> withNone(T[] values) {
        List<T> all = new ArrayList<>();
        all.add(null);
        all.addAll(Arrays.asList(values));
        return all;
    }

    static String cm(double mm) {
        double cm = mm / MM_A_CM;
        return cm == Math.rint(cm) ? String.valueOf((long) cm) : String.format(Locale.ROOT, "%.1f", cm);
    }

    private static String word(String family, Enum<?> value) {
        return NbBundle.getMessage(PieceWords.class, family + "." + value.name());
    }
}
