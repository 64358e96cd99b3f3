package org.glintery.workbench.shelves;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.glintery.api.framing.FramePlan;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.Legend;
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
        before.rows.forEach(row -> known.put(row.id(), row));
        readTogether(view);
        RowMaker maker = new RowMaker(view);
        List<ShelfRow> rows = new ArrayList<>();
        for (Stored<Piece> piece : view.all(Piece.TYPE)) {
            ShelfRow.Sources sources = maker.sources(piece);
            ShelfRow old = known.get(piece.id());
            rows.add(old != null && old.made().same(sources) ? old : maker.row(piece, sources));
        }
        Set<UUID> withPieces = view.all(Piece.TYPE).stream()
                .flatMap(piece -> piece.value().kit().stream())
                .collect(Collectors.toSet());
        view.all(Kit.TYPE).stream()
                .filter(kit -> !withPieces.contains(kit.id()))
                .forEach(kit -> rows.add(maker.row(kit)));
        rows.sort(Comparator.comparing(ShelfIndex::shelf).thenComparing(ShelfRow::title, new TitleOrder()));
        return new ShelfIndex(view.revision(), List.copyOf(rows));
    }

    /** Lists are read on all processors; found one by one the same documents would be read one after the other. */
    private static void readTogether(View view) {
        view.all(Legend.TYPE);
        view.all(Kit.TYPE);
        view.all(FramePlan.TYPE);
    }

    /** Shelves in the order of a piece's life; kits that have no piece yet come first. */
    private static int shelf(ShelfRow row) {
        return row.standing().map(Standing::ordinal).orElse(-1);
    }

    public static ShelfIndex of(View view) {
        return of(view, EMPTY);
    }

    /** The rows that hold every word of the query, of one standing or of all. Quick: for every key. */
    public List<ShelfRow> find(String query, Optional<Standing> standing) {
        return find(query, row -> standing.isEmpty() || standing.equals(row.standing()));
    }

    /** Kits that have no piece yet. */
    List<ShelfRow> kitsAlone(String query) {
        return find(query, ShelfRow::isKit);
    }

    private List<ShelfRow> find(String query, Predicate<ShelfRow> shelf) {
        List<List<String>> words = SearchWords.of(query);
        List<ShelfRow> found = new ArrayList<>();
        for (ShelfRow row : rows) {
            if (shelf.test(row) && holdsAll(row.searched(), words)) {
                found.add(row);
            }
        }
        return found;
    }

    /** How many pieces of each standing hold the query's words; standings without any are left out. */
    Map<Standing, Integer> counts(String query) {
        Map<Standing, Integer> counts = new EnumMap<>(Standing.class);
        find(query, row -> !row.isKit())
                .forEach(row -> counts.merge(row.standing().orElseThrow(), 1, Integer::sum));
        return counts;
    }

    int size() {
        return rows.size();
    }

    private static boolean holdsAll(String text, List<List<String>> words) {
        for (List<String> same : words) {
            if (same.stream().noneMatch(text::contains)) {
                return false;
            }
        }
        return true;
    }
}
