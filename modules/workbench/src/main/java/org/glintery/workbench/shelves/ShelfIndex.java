package org.glintery.workbench.shelves;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;

/** All pieces with what is searched, made once for each revision; rows that did not change are kept. Immutable. */
public final class ShelfIndex {
    static final ShelfIndex EMPTY = new ShelfIndex(-1, List.of());
    private final long revision;
    private final List<ShelfRow> rows;

    private ShelfIndex(long revision, List<ShelfRow> rows) {
        this.revision = revision;
        this.rows = rows;
    }

    /** The index of a view. @param before an earlier one, from which unchanged rows are taken */
    public static ShelfIndex of(View view, ShelfIndex before) {
        if (before.revision == view.revision()) {
            return before;
        }
        Map<UUID, ShelfRow> known = new HashMap<>();
        before.rows.forEach(row -> known.put(row.piece(), row));
        RowMaker maker = new RowMaker(view);
        List<ShelfRow> rows = new ArrayList<>();
        for (Stored<Piece> piece : view.all(Piece.TYPE)) {
            ShelfRow.Sources sources = maker.sources(piece);
            ShelfRow old = known.get(piece.id());
            rows.add(old != null && old.made().same(sources) ? old : maker.row(piece, sources));
        }
        rows.sort(Comparator.comparing((ShelfRow r) -> r.standing())
                .thenComparing(ShelfRow::title, String.CASE_INSENSITIVE_ORDER));
        return new ShelfIndex(view.revision(), List.copyOf(rows));
    }

    public static ShelfIndex of(View view) {
        return of(view, EMPTY);
    }

    /** The rows that hold every word of the query, of one standing or of all. Quick: for every key. */
    public List<ShelfRow> find(String query, Optional<Standing> standing) {
        List<String> words = SearchWords.of(query);
        List<ShelfRow> found = new ArrayList<>();
        for (ShelfRow row : rows) {
            if ((standing.isEmpty() || standing.get() == row.standing()) && holdsAll(row.searched(), words)) {
                found.add(row);
            }
        }
        return found;
    }

    /** How many pieces of each standing hold the query's words; standings without any are left out. */
    Map<Standing, Integer> counts(String query) {
        Map<Standing, Integer> counts = new EnumMap<>(Standing.class);
        find(query, Optional.empty()).forEach(row -> counts.merge(row.standing(), 1, Integer::sum));
        return counts;
    }

    int size() {
        return rows.size();
    }

    private static boolean holdsAll(String text, List<String> words) {
        for (String word : words) {
            if (!text.contains(word)) {
                return false;
            }
        }
        return true;
    }
}
