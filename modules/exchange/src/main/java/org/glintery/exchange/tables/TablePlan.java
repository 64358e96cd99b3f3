package org.glintery.exchange.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.glintery.api.Json;

/**
 * One table for a form, with those of its lists and maps.
 *
 * @param isMap whether its rows are a map's and have a key
 * @param depth how many lists and maps it lies within
 * @param place the keys from the outer table's row value to the list or map
 */
record TablePlan(
        String name,
        Form form,
        boolean isMap,
        int depth,
        List<String> place,
        List<Column> columns,
        List<TablePlan> inner) {

    static TablePlan ofDocuments(String name, Form form) {
        return of(name, form, false, 0, List.of());
    }

    private static TablePlan of(String name, Form form, boolean isMap, int depth, List<String> place) {
        var plan = new TablePlan(name, form, isMap, depth, place, new ArrayList<>(), new ArrayList<>());
        plan.add(form, List.of());
        return plan;
    }

    private void add(Form at, List<String> path) {
        Kind kind = at.kind();
        var column = new Column(path, kind);
        if (kind != Kind.RECORD) {
            columns.add(column);
            if (kind == Kind.LIST || kind == Kind.MAP) {
                at.inner()
                        .ifPresent(form ->
                                inner.add(of(column.innerTable(name), form, kind == Kind.MAP, depth + 1, path)));
            }
            return;
        }
        if (at.hasOdd()) {
            columns.add(column);
        }
        for (String key : at.keys()) {
            List<String> longer = new ArrayList<>(path);
            longer.add(key);
            add(at.at(key), longer);
        }
    }

    /** The cells of one row's value, in the order of the columns. */
    List<String> cells(Json value, Cells cells) {
        List<String> row = new ArrayList<>(columns.size());
        new RowSpreading(cells, row).spread(form, Optional.of(value));
        return row;
    }
}
