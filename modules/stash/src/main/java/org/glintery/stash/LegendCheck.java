package org.glintery.stash;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.glintery.api.Refusal;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Drill;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;

/** Whether a legend can be kept, and what its maker should look at again. */
final class LegendCheck {

    private LegendCheck() {}

    static Optional<Refusal> refusal(List<LegendLine> lines, int drillsPerBag) {
        if (lines.size() > Legend.MOST_LINES) {
            return Optional.of(new Refusal(
                    "too-long",
                    "A legend has at most " + Legend.MOST_LINES + " lines and this one has " + lines.size()
                            + ". Nothing was saved. Is it another table?"));
        }
        Map<Drill, Sums> sums = new LinkedHashMap<>();
        for (int i = 0; i < lines.size(); i++) {
            LegendLine line = lines.get(i);
            boolean outOfRange = isOutOfRange(line.needed(), Amount.MOST)
                    || isOutOfRange(line.bags().map(Integer::longValue), Amount.MOST_BAGS);
            if (outOfRange
                    || sums.merge(line.drill(), Sums.of(line, drillsPerBag), Sums::plus)
                            .areTooMany()) {
                return Optional.of(outOfRange(i, line));
            }
        }
        return Optional.empty();
    }

    /** What the lines of one drill come to: each of these is booked as one amount in the end. */
    private record Sums(long needed, long supplied, long uncertainty) {

        static Sums of(LegendLine line, int drillsPerBag) {
            return new Sums(
                    line.needed().orElse(0L),
                    BagSize.count(line, drillsPerBag),
                    line.supplied().uncertainty());
        }

        Sums plus(Sums other) {
            return new Sums(needed + other.needed, supplied + other.supplied, uncertainty + other.uncertainty);
        }

        boolean areTooMany() {
            return needed > Amount.MOST || supplied > Amount.MOST || uncertainty > Amount.MOST;
        }
    }

    /** Symbols that stand on several lines, each as one plain sentence. */
    static List<String> warnings(List<LegendLine> lines) {
        Map<String, List<Integer>> bySymbol = new LinkedHashMap<>();
        for (int i = 0; i < lines.size(); i++) {
            String symbol = lines.get(i).symbol().strip();
            if (!symbol.isEmpty()) {
                bySymbol.computeIfAbsent(symbol, s -> new ArrayList<>()).add(i + 1);
            }
        }
        List<String> warnings = new ArrayList<>();
        bySymbol.forEach((symbol, at) -> {
            if (at.size() > 1) {
                warnings.add("The symbol " + symbol + " stands on lines " + listed(at) + ". All were kept.");
            }
        });
        return warnings;
    }

    private static boolean isOutOfRange(Optional<Long> number, long most) {
        return number.filter(n -> n < 0 || n > most).isPresent();
    }

    private static Refusal outOfRange(int index, LegendLine line) {
        return new Refusal(
                "out-of-range",
                "Line " + (index + 1) + " (" + line.symbol() + " "
                        + line.drill().code() + ") has an amount that can't be right. Nothing was saved.");
    }

    private static String listed(List<Integer> numbers) {
        String all = numbers.toString();
        String inner = all.substring(1, all.length() - 1);
        int last = inner.lastIndexOf(", ");
        return inner.substring(0, last) + " and" + inner.substring(last + 1);
    }
}
