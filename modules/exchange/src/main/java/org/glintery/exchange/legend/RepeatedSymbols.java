package org.glintery.exchange.legend;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.glintery.api.stash.LegendLine;
import org.openide.util.NbBundle.Messages;

/** Misprinted legends repeat a symbol: worth a word, no reason to refuse. */
final class RepeatedSymbols {
    private RepeatedSymbols() {}

    /** One plain sentence for each, with the legend's own line numbers, which the maker will see. */
    @Messages({
        "# {0} - symbol",
        "# {1} - all lines but the last",
        "# {2} - last line",
        "RepeatedSymbols.repeated=The symbol {0} stands on lines {1} and {2}. All were kept."
    })
    static List<String> warnings(List<LegendLine> lines) {
        Map<String, List<String>> places = new LinkedHashMap<>();
        for (int i = 0; i < lines.size(); i++) {
            places.computeIfAbsent(lines.get(i).symbol(), symbol -> new ArrayList<>())
                    .add(String.valueOf(i + 1));
        }
        return places.entrySet().stream()
                .filter(entry -> entry.getValue().size() > 1)
                .map(entry -> sentence(entry.getKey(), entry.getValue()))
                .collect(Collectors.toList());
    }

    private static String sentence(String symbol, List<String> lines) {
        int last = lines.size() - 1;
        return Bundle.RepeatedSymbols_repeated(symbol, String.join(", ", lines.subList(0, last)), lines.get(last));
    }
}
