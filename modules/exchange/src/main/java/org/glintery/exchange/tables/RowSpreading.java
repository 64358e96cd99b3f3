package org.glintery.exchange.tables;

import java.util.List;
import java.util.Optional;
import org.glintery.api.Json;

/** Spreads a value over the cells of a row, in the order in which a plan has its columns. */
final class RowSpreading {
    private final Cells cells;
    private final List<String> row;

    /** @param row filled */
    RowSpreading(Cells cells, List<String> row) {
        this.cells = cells;
        this.row = row;
    }

    void spread(Form form, Optional<Json> value) {
        if (form.kind() != Kind.RECORD) {
            row.add(cells.written(value, form.kind()));
            return;
        }
        boolean spreads = value.filter(form::spreads).isPresent();
        if (form.hasOdd()) {
            row.add(spreads ? "" : cells.written(value, Kind.RECORD));
        }
        for (String key : form.keys()) {
            spread(form.at(key), spreads ? field(value, key) : Optional.empty());
        }
    }

    /** What stands at a place of a value, through records that are spread. */
    static Optional<Json> at(Form form, Json value, List<String> place) {
        Optional<Json> found = Optional.of(value);
        Form at = form;
        for (String key : place) {
            found = found.filter(at::spreads).isPresent() ? field(found, key) : Optional.empty();
            at = at.at(key);
        }
        return found;
    }

    private static Optional<Json> field(Optional<Json> object, String key) {
        return object.flatMap(json -> ((Json.Obj) json).get(key));
    }
}
