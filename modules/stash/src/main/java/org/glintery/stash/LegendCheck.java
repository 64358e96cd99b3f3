package org.glintery.stash;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.glintery.api.Refusal;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.openide.util.NbBundle.Messages;

/** Whether a legend can be kept, and what its maker should look at again. */
final class LegendCheck {

    private LegendCheck() {}

    @Messages({
        "# {0} - most lines",
        "# {1} - lines",
        "LegendCheck.tooLong=A legend has at most {0} lines and this one has {1}. Nothing was saved. Is it another table?"
    })
    static Optional<Refusal> refusal(List<LegendLine> lines, int drillsPerBag) {
        if (lines.size() > Legend.MOST_LINES) {
            return Optional.of(new Refusal(
                    "too-long",
                    Bundle.LegendCheck_tooLong(Balance.grouped(Legend.MOST_LINES), Balance.grouped(lines.size()))));
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
    @Messages({
        "# {0} - symbol",
        "# {1} - numbers of lines",
        "LegendCheck.repeated=The symbol {0} stands on lines {1}. All were kept."
    })
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
                warnings.add(Bundle.LegendCheck_repeated(symbol, listed(at)));
            }
        });
        return warnings;
    }

    private static boolean isOutOfRange(Optional<Long> number, long most) {
        return number.filter(n -> n < 0 || n > most).isPresent();
    }

    @Messages({
        "# {0} - number of the line",
        "# {1} - symbol",
        "# {2} - code",
        "LegendCheck.outOfRange=Line {0} ({1} {2}) has an amount that can''t be right. Nothing was saved."
    })
    private static Refusal outOfRange(int index, LegendLine line) {
        return new Refusal(
                "out-of-range",
                Bundle.LegendCheck_outOfRange(
                        String.valueOf(index + 1), line.symbol(), line.drill().code()));
    }

    @Messages({"# {0} - numbers", "# {1} - last number", "LegendCheck.and={0} and {1}"})
    private static String listed(List<Integer> numbers) {
        int last = numbers.size() - 1;
        String before = numbers.subList(0, last).stream().map(String::valueOf).collect(Collectors.joining(", "));
        return Bundle.LegendCheck_and(before, String.valueOf(numbers.get(last)));
    }
}
