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
    private Optional<Standing> standing = Optional.empty();

    /** A shelf in the list of standings. @param standing empty for all pieces */
    record Shelf(Optional<Standing> standing, int count) {}

    void setIndex(ShelfIndex newIndex) {
        index = newIndex;
    }

    ShelfIndex index() {
        return index;
    }

    void setQuery(String newQuery) {
        query = newQuery;
    }

    void choose(Optional<Standing> newStanding) {
        standing = newStanding;
    }

    Optional<Standing> chosen() {
        return standing;
    }

    boolean nothingYet() {
        return index.size() == 0;
    }

    List<ShelfRow> rows() {
        return index.find(query, standing);
    }

    /** All pieces first, then each standing that has any, and the chosen one even without. */
    List<Shelf> shelves() {
        Map<Standing, Integer> counts = index.counts(query);
        List<Shelf> shelves = new ArrayList<>();
        shelves.add(new Shelf(
                Optional.empty(),
                counts.values().stream().mapToInt(Integer::intValue).sum()));
        for (Standing one : Standing.values()) {
            int count = counts.getOrDefault(one, 0);
            if (count > 0 || standing.filter(s -> s == one).isPresent()) {
                shelves.add(new Shelf(Optional.of(one), count));
            }
        }
        return shelves;
    }
}
