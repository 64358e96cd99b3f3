package org.glintery.storage.ui;

import java.util.List;
import java.util.stream.Collectors;
import org.openide.util.NbBundle.Messages;

/** The Cabinet in words: for tooltips, headings and who does not see the drawing. Pure. */
final class CabinetWords {

    private static final int MOST_IN_A_TIP = 3;

    private CabinetWords() {}

    @Messages({
        "# {0} - pieces",
        "CabinetWords.holds={0}",
        "# {0} - pieces",
        "CabinetWords.toClear={0}, made: to be kitted down",
        "CabinetWords.free=free",
        "CabinetWords.inUse=in use",
        "# {0} - state",
        "# {1} - who",
        "CabinetWords.lent={0}, lent to {1}",
        "# {0} - who",
        "CabinetWords.lentEmpty=empty, lent to {0}"
    })
    static String state(CabinetSheet.HolderDrawing holder) {
        if (holder.empty() && holder.lentTo().isPresent()) {
            return Bundle.CabinetWords_lentEmpty(holder.lentTo().get());
        }
        String pieces = String.join(", ", holder.pieces());
        String state = holder.empty()
                ? Bundle.CabinetWords_free()
                : holder.pieces().isEmpty()
                        ? Bundle.CabinetWords_inUse()
                        : holder.toClear() ? Bundle.CabinetWords_toClear(pieces) : Bundle.CabinetWords_holds(pieces);
        return holder.lentTo().map(who -> Bundle.CabinetWords_lent(state, who)).orElse(state);
    }

    @Messages({
        "# {0} - pocket",
        "CabinetWords.empty={0}: empty",
        "# {0} - pocket",
        "# {1} - contents",
        "CabinetWords.pocket={0}: {1}",
        "# {0} - pocket and contents",
        "# {1} - symbols",
        "CabinetWords.symbols={0}. Symbol {1}",
        "# {0} - pocket and contents",
        "CabinetWords.mixed={0} (mixed)"
    })
    static String pocket(CabinetSheet.PocketDrawing pocket) {
        String words = pocket.contents().isEmpty()
                ? Bundle.CabinetWords_empty(pocket.name())
                : Bundle.CabinetWords_pocket(pocket.name(), contents(pocket.contents()));
        String kept = pocket.mixed() ? Bundle.CabinetWords_mixed(words) : words;
        return pocket.symbols().isEmpty()
                ? kept
                : Bundle.CabinetWords_symbols(kept, String.join(", ", pocket.symbols()));
    }

    @Messages({
        "# {0} - amount",
        "# {1} - drill",
        "CabinetWords.content={0} of {1}",
        "# {0} - amount",
        "# {1} - drill",
        "# {2} - name",
        "CabinetWords.named={0} of {1} {2}"
    })
    static String content(CabinetSheet.Content content) {
        String amount = content.balance().words();
        return content.name()
                .map(name -> Bundle.CabinetWords_named(amount, content.drill().code(), name))
                .orElseGet(() ->
                        Bundle.CabinetWords_content(amount, content.drill().code()));
    }

    static String contents(List<CabinetSheet.Content> contents) {
        return contents.stream().map(CabinetWords::content).collect(Collectors.joining("; "));
    }

    /** A bag's name and the first few of its contents, for a tooltip that fits on the screen. */
    @Messages({
        "# {0} - bag",
        "# {1} - contents",
        "CabinetWords.bag={0}: {1}",
        "# {0} - contents",
        "# {1} - how many more",
        "CabinetWords.more={0}; and {1} more"
    })
    static String bag(CabinetSheet.BagLine bag) {
        int all = bag.contents().size();
        String first = contents(bag.contents().subList(0, Math.min(all, MOST_IN_A_TIP)));
        return Bundle.CabinetWords_bag(
                bag.name(), all > MOST_IN_A_TIP ? Bundle.CabinetWords_more(first, all - MOST_IN_A_TIP) : first);
    }
}
