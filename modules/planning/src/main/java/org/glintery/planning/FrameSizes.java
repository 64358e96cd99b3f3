package org.glintery.planning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.glintery.api.Preview;

/** Sizes in which frames are sold ready made. */
@Preview(since = "1.0")
public final class FrameSizes {

    private static final int ISO_SIZES = 11;

    private FrameSizes() {}

    /** A0 to A10 of ISO 216: each is the one before, halved across and rounded down to a millimetre. */
    public static List<FrameSize> isoA() {
        return halved("A", 841, 1189);
    }

    /** B0 to B10 of ISO 216. */
    public static List<FrameSize> isoB() {
        return halved("B", 1000, 1414);
    }

    private static List<FrameSize> halved(String series, int shortMm, int longMm) {
        List<FrameSize> sizes = new ArrayList<>();
        int narrow = shortMm;
        int tall = longMm;
        for (int i = 0; i < ISO_SIZES; i++) {
            sizes.add(new FrameSize(series + i, narrow * 1_000L, tall * 1_000L));
            int half = tall / 2;
            tall = narrow;
            narrow = half;
        }
        return List.copyOf(sizes);
    }

    /**
     * What shops commonly keep, smallest first: centimetres, inches, and A5 to A1. Common practice, no published source
     * beyond ISO 216.
     */
    public static List<FrameSize> common() {
        Stream<FrameSize> metric = Stream.of(
                FrameSize.cm(10, 15),
                FrameSize.cm(13, 18),
                FrameSize.cm(15, 20),
                FrameSize.cm(18, 24),
                FrameSize.cm(20, 20),
                FrameSize.cm(20, 25),
                FrameSize.cm(20, 30),
                FrameSize.cm(24, 30),
                FrameSize.cm(30, 30),
                FrameSize.cm(30, 40),
                FrameSize.cm(30, 45),
                FrameSize.cm(35, 50),
                FrameSize.cm(40, 40),
                FrameSize.cm(40, 50),
                FrameSize.cm(40, 60),
                FrameSize.cm(50, 50),
                FrameSize.cm(50, 60),
                FrameSize.cm(50, 70),
                FrameSize.cm(60, 80),
                FrameSize.cm(60, 90),
                FrameSize.cm(70, 100));
        Stream<FrameSize> imperial = Stream.of(
                FrameSize.inches(5, 7),
                FrameSize.inches(8, 10),
                FrameSize.inches(11, 14),
                FrameSize.inches(12, 16),
                FrameSize.inches(16, 20),
                FrameSize.inches(18, 24),
                FrameSize.inches(20, 24),
                FrameSize.inches(24, 36));
        return Stream.of(metric, imperial, isoA().subList(1, 6).stream())
                .flatMap(sizes -> sizes)
                .sorted(Comparator.comparingDouble(FrameSize::areaM2).thenComparing(FrameSize::name))
                .toList();
    }
}
