package org.glintery.charts.card;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.glintery.api.ledger.Balance;
import org.glintery.api.stash.CardEntry;
import org.glintery.colour.Srgb;
import org.openide.util.NbBundle.Messages;

/** The entries of a card as they are read. Used once; not safe for several threads. */
@Messages({
    "# {0} - how many",
    "# {1} - the same in figures",
    "CardEntries.rowsWithoutCode={0,choice,1#One line without a code was|1<{1} lines without a code were} left out.",
    "# {0} - code",
    "# {1} - what stands there",
    "CardEntries.noColour={0}: ''{1}'' is no colour; its colour is taken as not known.",
    "# {0} - code",
    "CardEntries.codeTwice={0} is there twice; the first line counts.",
    "# {0} - how many",
    "CardEntries.moreWarnings=And {0} more of this kind."
})
final class CardEntries {

    private static final int MOST_WARNINGS = 20;

    private final Map<String, CardEntry> byCode = new LinkedHashMap<>();
    private final List<String> warnings = new ArrayList<>();
    private int withoutCode;
    private int untold;

    /** Takes a row with a code; a name stands in for a missing code. */
    void add(CardRow row) {
        String name = row.name().strip();
        String code = row.code().isBlank() ? name : row.code().strip();
        if (code.isEmpty()) {
            withoutCode++;
        } else if (byCode.containsKey(code)) {
            warn(Bundle.CardEntries_codeTwice(code));
        } else {
            byCode.put(code, new CardEntry(Optional.of(name).filter(n -> !n.isEmpty()), hex(code, row.hex()), false));
        }
    }

    private Optional<String> hex(String code, String written) {
        if (written.isBlank()) {
            return Optional.empty();
        }
        Optional<String> hex = Srgb.parse(written).map(Srgb::hex);
        if (hex.isEmpty()) {
            warn(Bundle.CardEntries_noColour(code, written.strip()));
        }
        return hex;
    }

    private void warn(String text) {
        if (warnings.size() < MOST_WARNINGS) {
            warnings.add(text);
        } else {
            untold++;
        }
    }

    boolean isEmpty() {
        return byCode.isEmpty();
    }

    /** In the order of the file. */
    Map<String, CardEntry> byCode() {
        return byCode;
    }

    List<String> warnings() {
        List<String> all = new ArrayList<>(warnings);
        if (untold > 0) {
            all.add(Bundle.CardEntries_moreWarnings(Balance.grouped(untold)));
        }
        if (withoutCode > 0) {
            all.add(Bundle.CardEntries_rowsWithoutCode(withoutCode, Balance.grouped(withoutCode)));
        }
        return all;
    }
}
