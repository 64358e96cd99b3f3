package org.glintery.workbench.shelves;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.glintery.api.stash.Standing;

/** What the shelves show for a query and a chosen standing. No Swing. */
final class ShelvesModel {
    private ShelfIndex index = ShelfIndex.EMPTY;
    private String query = "";
    private Shelf chosen = Shelf.ALL;

    /**
     * One of the shelves.
     *
     * @param standing empty for all pieces, and for kits
     * @param kitsAlone whether kits without a piece lie here
     */
    record Shelf(Optional<Standing> standing, boolean kitsAlone) {
        static final Shelf ALL = new Shelf(Optional.empty(), false);
        static final Shelf KITS = new Shelf(Optional.empty(), true);

        static Shelf of(Standing standing) {
            return new Shelf(Optional.of(standing), false);
        }
    }

    /** A shelf in the list, and how much is on it. */
    record Line(Shelf shelf, int count) {}

    void setIndex(ShelfIndex newIndex) {
        index = newIndex;
    }

    ShelfIndex index() {
        return index;
    }

    void setQuery(String newQuery) {
        query = newQuery;
    }

    void choose(Shelf shelf) {
        chosen = shelf;
    }

    Shelf chosen() {
        return chosen;
    }

    boolean nothingYet() {
        return index.size() == 0;
    }

    List<ShelfRow> rows() {
        return chosen.kitsAlone() ? index.kitsAlone(query) : index.find(query, chosen.standing());
    }

    /** All first, then each shelf on which there is anything, and the chosen one even when there is not. */
    List<Line> shelves() {
        Map<Standing, Integer> counts = index.counts(query);
        int kits = index.kitsAlone(query).size();
        int pieces = counts.values().stream().mapToInt(Integer::intValue).sum();
        List<Line> lines = new ArrayList<>();
        lines.add(new Line(Shelf.ALL, pieces + kits));
        if (kits > 0 || chosen.kitsAlone()) {
            lines.add(new Line(Shelf.KITS, kits));
        }
        for (Standing one : Standing.values()) {
            int count = counts.getOrDefault(one, 0);
            if (count > 0 || chosen.equals(Shelf.of(one))) {
                lines.add(new Line(Shelf.of(one), count));
            }
        }
        return lines;
    }
}
