package org.glintery.records;

import java.sql.SQLException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalInt;
import java.util.UUID;
import java.util.function.BiConsumer;
import org.glintery.api.ledger.LedgerEntry;
import org.glintery.api.workshop.LedgerQuery;

/** Hands the entries of the ledger over, oldest first, so many at a time that changes can be made in between. Any thread. */
final class LedgerPages {
    private static final int PAGE = 2_000;

    private final WriterThread writer;
    private final Tables tables;
    private final Names names;

    LedgerPages(WriterThread writer, Tables tables, Names names) {
        this.writer = writer;
        this.tables = tables;
        this.names = names;
    }

    /** @param revision entries that later changes booked are left out */
    void each(LedgerQuery query, long revision, BiConsumer<LedgerEntry, MovementRow> each) {
        OptionalInt drill = query.drill().map(names.drills()::find).orElse(OptionalInt.empty());
        OptionalInt spot = query.spot().map(names.spots()::find).orElse(OptionalInt.empty());
        if (query.drill().isPresent() && drill.isEmpty() || query.spot().isPresent() && spot.isEmpty()) {
            return;
        }
        long next = query.fromSequence();
        int left = query.most();
        while (left > 0) {
            long from = next;
            int wanted = Math.min(left, PAGE);
            Map<LedgerEntry, MovementRow> entries = writer.call(() -> entries(from, wanted, revision, drill, spot));
            entries.forEach(each);
            if (entries.size() < wanted) {
                return;
            }
            left -= entries.size();
            next = entries.keySet().stream()
                            .mapToLong(LedgerEntry::sequence)
                            .max()
                            .orElseThrow()
                    + 1;
        }
    }

    private Map<LedgerEntry, MovementRow> entries(
            long from, int most, long revision, OptionalInt drill, OptionalInt spot) throws SQLException {
        var words = new ActionWords(names);
        var entries = new LinkedHashMap<LedgerEntry, MovementRow>();
        long change = 0;
        UUID changeId = null;
        for (MovementRow row : tables.movements().rows(from, most, drill, spot)) {
            if (row.change() > revision) {
                break;
            }
            if (row.change() != change) {
                change = row.change();
                changeId = tables.changes().row(change).id();
            }
            UUID reversed = row.reverses() == 0
                    ? null
                    : tables.movements().row(row.reverses()).id();
            entries.put(words.entry(row, sequence -> reversed, changeId), row);
        }
        return entries;
    }
}
