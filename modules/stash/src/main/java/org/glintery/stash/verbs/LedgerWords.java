package org.glintery.stash.verbs;

import java.util.Locale;
import java.util.Map;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.openide.util.NbBundle.Messages;

/** Movements as lines of text for people. The words are looked up once: there may be millions of lines. */
@Messages({
    "LedgerWords.movement=movement",
    "LedgerWords.stocktake=stocktake",
    "LedgerWords.reversal=reversal",
    "LedgerWords.some=some"
})
final class LedgerWords {

    private final Map<String, String> kinds = Map.of(
            DrillsLedgerVerb.MOVEMENT, Bundle.LedgerWords_movement(),
            DrillsLedgerVerb.STOCKTAKE, Bundle.LedgerWords_stocktake(),
            DrillsLedgerVerb.REVERSAL, Bundle.LedgerWords_reversal());
    private final String some = Bundle.LedgerWords_some();

    String of(DrillsLedgerVerb.Booked booked, Drill drill) {
        String reason = booked.reason().isBlank() ? "" : "  (" + booked.reason() + ")";
        return String.format(
                Locale.ROOT,
                "%7d  %s  %-9s  %9s  %s  %s -> %s%s",
                booked.sequence(),
                booked.id(),
                kinds.get(booked.kind()),
                booked.uncounted() ? some : Balance.grouped(booked.count()),
                drill.words(),
                booked.from(),
                booked.to(),
                reason);
    }
}
