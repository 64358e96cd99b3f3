package org.glintery.exchange.tables;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.glintery.api.Json;
import org.glintery.exchange.csv.CsvSheet;

/** Writes the rows that one document makes in one table, be it the document's own or one of a list within. */
final class TableRows {
    private final List<TablePlan> chain;
    private final Cells cells;
    private final CsvSheet sheet;

    /** @param chain from the documents' table to the one that is written */
    TableRows(List<TablePlan> chain, Cells cells, CsvSheet sheet) {
        this.chain = chain;
        this.cells = cells;
        this.sheet = sheet;
    }

    /** The first row. @param rootKeys what the documents' own table is keyed by */
    void header(List<String> rootKeys) throws IOException {
        TablePlan plan = chain.get(chain.size() - 1);
        List<String> header = new ArrayList<>(plan.depth() == 0 ? rootKeys : rootKeys.subList(0, 1));
        for (int level = 1; level <= plan.depth(); level++) {
            header.add(level == 1 ? "at" : "at" + level);
        }
        if (plan.isMap()) {
            header.add("key");
        }
        plan.columns().forEach(column -> header.add(column.name()));
        sheet.row(header);
    }

    /** @param keys of the document; inner tables have only the first of them */
    void write(List<String> keys, Json document) throws IOException {
        boolean own = chain.size() == 1;
        write(0, own ? keys : keys.subList(0, 1), Optional.empty(), document);
    }

    private void write(int level, List<String> keys, Optional<String> mapKey, Json value) throws IOException {
        if (level == chain.size() - 1) {
            List<String> row = new ArrayList<>(keys);
            mapKey.map(Cells::text).ifPresent(row::add);
            row.addAll(chain.get(level).cells(value, cells));
            sheet.row(row);
            return;
        }
        TablePlan inner = chain.get(level + 1);
        Optional<Json> found = RowSpreading.at(chain.get(level).form(), value, inner.place());
        int at = 1;
        if (inner.isMap() && found.isPresent() && found.get() instanceof Json.Obj object) {
            for (Map.Entry<String, Json> entry : object.fields().entrySet()) {
                write(level + 1, with(keys, at++), Optional.of(entry.getKey()), entry.getValue());
            }
        } else if (!inner.isMap() && found.isPresent() && found.get() instanceof Json.Arr array) {
            for (Json item : array.items()) {
                write(level + 1, with(keys, at++), Optional.empty(), item);
            }
        }
    }

    private static List<String> with(List<String> keys, int at) {
        List<String> longer = new ArrayList<>(keys);
        longer.add(String.valueOf(at));
        return longer;
    }
}
