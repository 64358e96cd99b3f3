package org.glintery.planning;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.glintery.api.Preview;

/**
 * Which ready-made frames a piece fits: filling the rebate but for some play, or behind a mount. Frames that leave an odd
 * gap, too wide for play and too narrow for a mount, are left out. Defaults are common practice, no published source.
 *
 * @param playUm the most by which a frame may exceed the piece, in total for a dimension, when there is no mount
 * @param overlapUm how far the mount lies over the piece on each side
 * @param leastBorderUm the narrowest mount that still looks like one
 */
@Preview(since = "1.0")
public record ReadyMadeFitting(long playUm, long overlapUm, long leastBorderUm) {

    /** 6 mm of play, 3 mm of overlap, a mount of at least 25 mm. */
    public static final ReadyMadeFitting USUAL = new ReadyMadeFitting(6_000, 3_000, 25_000);

    /** @throws IllegalArgumentException for a negative length */
    public ReadyMadeFitting {
        if (playUm < 0 || overlapUm < 0 || leastBorderUm < 0) {
            throw new IllegalArgumentException("a length below 0");
        }
    }

    /** The frames of the list that the piece fits, in the order of the list. A piece is never turned, only the frame. */
    public List<ReadyMadeFit> fits(long artworkWidthUm, long artworkHeightUm, List<FrameSize> sizes) {
        if (artworkWidthUm <= 2 * overlapUm || artworkHeightUm <= 2 * overlapUm) {
            throw new IllegalArgumentException("no artwork left within the mount");
        }
        return sizes.stream()
                .flatMap(size -> fit(artworkWidthUm, artworkHeightUm, size).stream())
                .toList();
    }

    /** Lying as the piece lies, if that is possible; else the other way round. */
    private Optional<ReadyMadeFit> fit(long width, long height, FrameSize size) {
        boolean wide = width > height;
        return Stream.of(wide, !wide)
                .limit(size.shortUm() == size.longUm() ? 1 : 2)
                .flatMap(landscape -> fit(width, height, new ReadyMadeFit(size, landscape, Optional.empty())).stream())
                .findFirst();
    }

    private Optional<ReadyMadeFit> fit(long width, long height, ReadyMadeFit frame) {
        long spareWidth = frame.widthUm() - width;
        long spareHeight = frame.heightUm() - height;
        if (spareWidth < 0 || spareHeight < 0) {
            return Optional.empty();
        }
        if (spareWidth <= playUm && spareHeight <= playUm) {
            return Optional.of(frame);
        }
        MountWindow window = new MountWindow(
                width - 2 * overlapUm, height - 2 * overlapUm, spareWidth / 2 + overlapUm, spareHeight / 2 + overlapUm);
        return Math.min(window.sideBorderUm(), window.topBorderUm()) < leastBorderUm
                ? Optional.empty()
                : Optional.of(new ReadyMadeFit(frame.size(), frame.landscape(), Optional.of(window)));
    }
}
