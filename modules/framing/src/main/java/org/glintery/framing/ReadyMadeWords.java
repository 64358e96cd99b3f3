package org.glintery.framing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import org.glintery.planning.FrameSizes;
import org.glintery.planning.MountWindow;
import org.glintery.planning.ReadyMadeFit;
import org.glintery.planning.ReadyMadeFitting;
import org.openide.util.NbBundle.Messages;

/** Ready-made frames that an artwork fits, in words: those it fills first, then the smallest mount first. */
public final class ReadyMadeWords {

    private static final int SHOWN = 5;
    private static final int UM_A_MM = 1_000;

    private static final Comparator<ReadyMadeFit> BEST_FIRST = Comparator.comparing(
                    (ReadyMadeFit fit) -> fit.mount().isPresent())
            .thenComparingDouble(fit -> fit.size().areaM2());

    private ReadyMadeWords() {}

    /** At most five; none for an artwork that a mount would cover. */
    public static List<String> fitting(Artwork artwork) {
        ReadyMadeFitting fitting = ReadyMadeFitting.USUAL;
        if (Math.min(artwork.widthUm(), artwork.heightUm()) <= 2 * fitting.overlapUm()) {
            return List.of();
        }
        return fitting.fits(artwork.widthUm(), artwork.heightUm(), FrameSizes.common()).stream()
                .sorted(BEST_FIRST)
                .limit(SHOWN)
                .map(ReadyMadeWords::words)
                .toList();
    }

    @Messages({
        "# {0} - frame",
        "ReadyMadeWords.filled={0}",
        "# {0} - frame",
        "# {1} - width",
        "# {2} - height",
        "# {3} - side border",
        "# {4} - top border",
        "ReadyMadeWords.mounted={0} with a mount: window {1} x {2} mm, {3} mm at the sides, {4} mm above and below"
    })
    private static String words(ReadyMadeFit fit) {
        if (fit.mount().isEmpty()) {
            return Bundle.ReadyMadeWords_filled(fit.size().name());
        }
        MountWindow window = fit.mount().get();
        return Bundle.ReadyMadeWords_mounted(
                fit.size().name(),
                mm(window.widthUm()),
                mm(window.heightUm()),
                mm(window.sideBorderUm()),
                mm(window.topBorderUm()));
    }

    private static String mm(long um) {
        return BigDecimal.valueOf(um)
                .divide(BigDecimal.valueOf(UM_A_MM), 1, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}
