package org.glintery.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReadyMadeFittingTest {

    // ISO 216.
    @ParameterizedTest
    @CsvSource({"A4, 210, 297", "A3, 297, 420", "A2, 420, 594", "B3, 353, 500", "A0, 841, 1189"})
    void knowsTheIsoSizes(String name, int shortMm, int longMm) {
        List<FrameSize> series = name.startsWith("A") ? FrameSizes.isoA() : FrameSizes.isoB();
        assertThat(series)
                .contains(new FrameSize(name, shortMm * 1_000L, longMm * 1_000L))
                .hasSize(11);
    }

    @Test
    void fitsWithoutAMount_whenTheSizeIsTheSame() {
        assertThat(ReadyMadeFitting.USUAL
                        .fits(500_000, 400_000, FrameSizes.common())
                        .get(0))
                .isEqualTo(new ReadyMadeFit(new FrameSize("40 x 50 cm", 400_000, 500_000), true, Optional.empty()));
    }

    // 30 x 40 cm in 40 x 50 cm: the mount overlaps 3 mm a side, so the window is 294 x 394 and 53 mm stay all round.
    @Test
    void givesTheMountWindow_whenTheFrameIsLarger() {
        List<FrameSize> one = List.of(FrameSize.cm(40, 50));
        assertThat(ReadyMadeFitting.USUAL.fits(300_000, 400_000, one))
                .containsExactly(new ReadyMadeFit(
                        one.get(0), false, Optional.of(new MountWindow(294_000, 394_000, 53_000, 53_000))));
    }

    @Test
    void leavesOut_whatIsTooSmallOrLeavesAnOddGap() {
        List<FrameSize> sizes = List.of(FrameSize.cm(30, 40), FrameSize.cm(40, 40));
        assertThat(ReadyMadeFitting.USUAL.fits(380_000, 390_000, sizes)).isEmpty();
        assertThat(ReadyMadeFitting.USUAL.fits(394_000, 394_000, sizes)).hasSize(1);
        assertThat(ReadyMadeFitting.USUAL.fits(393_999, 394_000, sizes)).isEmpty();
    }

    @Test
    void turnsTheFrame_whenOnlyTheOtherWayRoundFits() {
        ReadyMadeFitting narrow = new ReadyMadeFitting(0, 0, 0);
        List<FrameSize> sizes = List.of(new FrameSize("own", 300_000, 400_000));
        assertThat(narrow.fits(300_000, 300_000, sizes).get(0).landscape()).isFalse();
        assertThat(narrow.fits(310_000, 300_000, sizes).get(0).landscape()).isTrue();
    }

    @Test
    void refusesAPiece_thatTheMountWouldCover() {
        assertThatThrownBy(() -> ReadyMadeFitting.USUAL.fits(6_000, 100_000, FrameSizes.common()))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void listsCommonSizes_smallestFirstAndOnce() {
        List<FrameSize> common = FrameSizes.common();
        assertThat(common)
                .doesNotHaveDuplicates()
                .isSortedAccordingTo((a, b) -> Double.compare(a.areaM2(), b.areaM2()));
        assertThat(common)
                .contains(FrameSize.inches(16, 20), FrameSize.cm(35, 50))
                .hasSize(34);
    }
}
