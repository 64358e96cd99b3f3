package org.glintery.planning.clearing;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.glintery.planning.flow.Work;

/**
 * Measures clearings of invented rounds and prints a table, ending with 1 when a figure is missed: {@code java
 * org.glintery.planning.clearing.ClearingBenchmark [sparse|middling|dense|large ...]} on the test class path. Each figure
 * stands beside the machine's load, since other work slows it.
 */
public final class ClearingBenchmark {

    private static final Map<String, Size> SIZES = new LinkedHashMap<>();

    static {
        SIZES.put("sparse", new Size(InventedRounds.sparse(), 2_000, 20_000, 0, 10));
        SIZES.put("middling", new Size(InventedRounds.middling(), 2_000, Long.MAX_VALUE, 30, 3));
        SIZES.put("dense", new Size(InventedRounds.dense(), 2_000, Long.MAX_VALUE, 30, 3));
        SIZES.put("large", new Size(InventedRounds.large(), 30_000, Long.MAX_VALUE, 30, 1));
    }

    /**
     * A size and what is asked of it.
     *
     * @param mostWantsMs for the first stage, proven
     * @param mostProofMs for all parcels, proven; what takes longer need not be proven
     * @param leastSaved of the parcels that nobody thought about, in percent
     */
    private record Size(InventedRounds rounds, long mostWantsMs, long mostProofMs, int leastSaved, int seeds) {}

    private ClearingBenchmark() {}

    public static void main(String[] names) {
        List<String> asked = names.length == 0 ? List.copyOf(SIZES.keySet()) : List.of(names);
        warmUp();
        boolean met = true;
        for (String name : asked) {
            Size size = SIZES.get(name);
            System.out.println(name + ": " + size.rounds());
            for (long seed = 1; seed <= size.seeds(); seed++) {
                met &= measure(size, seed);
            }
        }
        if (!met) {
            throw new AssertionError("a figure was missed");
        }
    }

    private static void warmUp() {
        RoundClearing.clear(InventedRounds.sparse().round(99), Patience.SHORT);
    }

    private static boolean measure(Size size, long seed) {
        Round round = size.rounds().round(seed);
        long start = System.nanoTime();
        MostWants wants = MostWants.of(round, KindLines.of(round), Work.unlimited());
        long wantsMs = millisSince(start);
        boolean wantsProven = Arrays.stream(wants.plan().met()).sum() == wants.bound();

        start = System.nanoTime();
        Clearing clearing = RoundClearing.clear(round, Patience.USUAL);
        long allMs = millisSince(start);
        double saved = 100 - 100.0 * clearing.parcels() / clearing.plainParcels();
        int wanted = clearing.met().stream().mapToInt(Clearing.Met::wanted).sum();
        boolean met = wantsProven
                && wantsMs <= size.mostWantsMs()
                && saved >= size.leastSaved()
                && (size.mostProofMs() == Long.MAX_VALUE || clearing.parcelsProven() && allMs <= size.mostProofMs());
        System.out.printf(
                Locale.ROOT,
                "  seed %d: %d of %d wants (two by two %d), proven %s in %d ms; parcels %d -> %d (-%.0f %%), bound %d%s; "
                        + "unfairness %d, bound %d; %d ms; load %.1f%s%n",
                seed,
                clearing.wantsMet(),
                wanted,
                PairwiseSwaps.packets(round),
                wantsProven,
                wantsMs,
                clearing.plainParcels(),
                clearing.parcels(),
                saved,
                clearing.parcelsBound(),
                clearing.parcelsProven() ? ", proven" : "",
                clearing.unfairness(),
                clearing.unfairnessBound(),
                allMs,
                ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage(),
                met ? "" : "; MISSED");
        return met;
    }

    private static long millisSince(long start) {
        return (System.nanoTime() - start) / 1_000_000;
    }
}
