package org.glintery.exchange.legend;

import java.util.ArrayList;
import java.util.List;
import org.glintery.api.ledger.Balance;
import org.openide.util.NbBundle.Messages;

/**
 * Numbers such as 120.000, which were read as thousands but may be decimals: one word for all of a legend, since they are
 * mostly written alike. Not safe for use by several threads.
 */
final class DoubtfulNumbers {
    private final List<Doubtful> all = new ArrayList<>();

    /** @param smaller what it would be with decimals */
    private record Doubtful(int line, String written, long smaller) {}

    void add(int line, String written, long smaller) {
        all.add(new Doubtful(line, written.strip(), smaller));
    }

    @Messages({
        "# {0} - line",
        "# {1} - what is written there",
        "# {2} - how it was read",
        "# {3} - how it could be read",
        "DoubtfulNumbers.number=Line {0}: ''{1}'' was read as {2}. If it means {3}, write {3}.",
        "# {0} - line",
        "# {1} - what is written there",
        "# {2} - how it was read",
        "# {3} - how it could be read",
        "# {4} - how many more",
        "# {5} - the same, written out",
        "DoubtfulNumbers.numbers=Line {0}: ''{1}'' was read as {2}, and {4,choice,1#one more number|1<{5} more numbers} like it. If it means {3}, write {3}."
    })
    List<String> warnings() {
        if (all.isEmpty()) {
            return List.of();
        }
        Doubtful first = all.get(0);
        String line = Balance.grouped(first.line());
        String written = Signs.shortened(first.written());
        String read = Balance.grouped(first.smaller() * 1_000);
        String smaller = Balance.grouped(first.smaller());
        int more = all.size() - 1;
        return List.of(
                more == 0
                        ? Bundle.DoubtfulNumbers_number(line, written, read, smaller)
                        : Bundle.DoubtfulNumbers_numbers(line, written, read, smaller, more, Balance.grouped(more)));
    }
}
