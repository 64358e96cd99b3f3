package org.glintery.api.storage;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.PlainText;
import org.glintery.api.Stable;
import org.glintery.api.workshop.DocumentType;

/**
 * Any container with pockets, drawn as a grid of rows and columns, filled row by row.
 *
 * @param keptAt the keeping place
 * @param lentTo who has it now
 */
@Stable
public record Holder(
        String name,
        int rows,
        int columns,
        List<Pocket> pockets,
        Optional<UUID> keptAt,
        Optional<String> lentTo,
        String notes) {
    public static final DocumentType<Holder> TYPE = DocumentType.of("storage", "holder", Holder.class);

    public Holder {
        name = PlainText.line(name);
        lentTo = PlainText.line(lentTo);
        notes = PlainText.lines(notes);
        pockets = List.copyOf(pockets);
    }

    /** A holder of equal pockets named A1, A2 ... by row letter and column number. */
    public static Holder grid(String name, int rows, int columns, Optional<Long> capacity) {
        var pockets = new java.util.ArrayList<Pocket>();
        for (int r = 0; r < rows; r++) {
            for (int c = 0; c < columns; c++) {
                pockets.add(new Pocket(UUID.randomUUID(), rowName(r) + (c + 1), capacity, false));
            }
        }
        return new Holder(name, rows, columns, pockets, Optional.empty(), Optional.empty(), "");
    }

    private static String rowName(int row) {
        String last = String.valueOf((char) ('A' + row % 26));
        return row < 26 ? last : rowName(row / 26 - 1) + last;
    }
}
