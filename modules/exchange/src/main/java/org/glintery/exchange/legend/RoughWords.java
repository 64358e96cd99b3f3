package org.glintery.exchange.legend;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.AmountWords;
import org.glintery.api.ledger.Balance;
import org.openide.util.NbBundle.Messages;

/** Amounts such as "half a bag", and what they were taken for: one sentence for all that are alike. One thread. */
final class RoughWords {
    private final AmountWords words;
    private final Map<String, List<Integer>> lines = new LinkedHashMap<>();

    RoughWords(AmountWords words) {
        this.words = words;
    }

    void look(int line, String cell) {
        if (words.read(cell, Amount.MOST).uncountable() || AmountWords.tellPartOfBag(cell)) {
            lines.computeIfAbsent(cell.strip(), written -> new ArrayList<>()).add(line);
        }
    }

    @Messages({
        "# {0} - line",
        "# {1} - what is written there",
        "# {2} - what it was taken for",
        "RoughWords.one=Line {0}: ''{1}'' was taken for {2}.",
        "# {0} - line",
        "# {1} - what is written there",
        "# {2} - what it was taken for",
        "# {3} - how many more",
        "# {4} - how many more in words",
        "RoughWords.more=Line {0}: ''{1}'' was taken for {2}, and so on {3,choice,1#one more line|1<{4} more lines}."
    })
    List<String> warnings() {
        List<String> warnings = new ArrayList<>();
        lines.forEach((cell, on) -> {
            String line = Balance.grouped(on.get(0));
            String written = Signs.shortened(cell);
            int more = on.size() - 1;
            warnings.add(
                    more == 0
                            ? Bundle.RoughWords_one(line, written, taken(cell))
                            : Bundle.RoughWords_more(line, written, taken(cell), more, Balance.grouped(more)));
        });
        return warnings;
    }

    private String taken(String cell) {
        Amount amount = words.read(cell, Amount.MOST).amount();
        return amount.known() ? amount.words() : new Balance(0, 0, 1).words();
    }
}
