package org.glintery.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.ledger.Spot;
import org.glintery.api.storage.Holder;
import org.glintery.api.storage.Pocket;
import org.glintery.api.workshop.ChangeSet;

/** Case A to Case F, and which of their pockets are still free. */
final class Cases {
    /** Drills that a pocket takes. */
    static final long CAPACITY = 900;

    /** The case of leftovers. */
    static final int LEFTOVERS = 5;

    private static final int[][] ROWS_AND_COLUMNS = {{6, 8}, {6, 8}, {6, 8}, {6, 8}, {5, 8}, {4, 8}};
    private static final int LENT = 4;

    private final List<UUID> ids = new ArrayList<>();
    private final List<List<Spot>> pockets = new ArrayList<>();
    private final int[] taken = new int[ROWS_AND_COLUMNS.length];

    Cases(Seeded seeded, ChangeSet.Builder change) {
        for (int i = 0; i < ROWS_AND_COLUMNS.length; i++) {
            int rows = ROWS_AND_COLUMNS[i][0];
            int columns = ROWS_AND_COLUMNS[i][1];
            List<Pocket> made = new ArrayList<>();
            for (int row = 0; row < rows; row++) {
                for (int column = 1; column <= columns; column++) {
                    boolean mixed = i + 1 == LEFTOVERS && row == rows - 1 && column == columns;
                    made.add(new Pocket(seeded.id(), (char) ('A' + row) + "" + column, Optional.of(CAPACITY), mixed));
                }
            }
            UUID id = seeded.id();
            Optional<String> lent =
                    i + 1 == LENT ? Optional.of("the club, until the December meeting") : Optional.empty();
            change.create(
                    Holder.TYPE,
                    id,
                    new Holder("Case " + (char) ('A' + i), rows, columns, made, Optional.empty(), lent, ""));
            ids.add(id);
            pockets.add(made.stream()
                    .<Spot>map(pocket -> new Spot.InPocket(id, pocket.id()))
                    .toList());
        }
    }

    /** @param number from 1 for Case A */
    UUID id(int number) {
        return ids.get(number - 1);
    }

    int free(int number) {
        return pockets.get(number - 1).size() - taken[number - 1];
    }

    Optional<Spot> next(int number) {
        return free(number) == 0
                ? Optional.empty()
                : Optional.of(pockets.get(number - 1).get(taken[number - 1]++));
    }
}
