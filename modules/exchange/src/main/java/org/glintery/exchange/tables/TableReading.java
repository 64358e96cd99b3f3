package org.glintery.exchange.tables;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.glintery.api.Json;
import org.glintery.api.MalformedException;
import org.glintery.exchange.csv.BrokenRowException;
import org.glintery.exchange.csv.CsvRow;
import org.glintery.exchange.csv.CsvRows;
import org.openide.util.NbBundle.Messages;

/**
 * Reads the tables of one kind. Those of lists and maps are read first and kept until the rows they belong to come, so that
 * the order of rows does not matter: a spreadsheet may have sorted them.
 */
@Messages({
    "# {0} - table",
    "# {1} - line",
    "# {2} - column",
    "# {3} - what is wrong",
    "TableReading.cell={0}.csv, line {1}, column {2}: {3}",
    "# {0} - table",
    "TableReading.header=the columns of {0}.csv are not those that columns.csv names"
})
final class TableReading {
    private static final String WITHIN = "/";

    private final GuardedZip zip;
    private final TableIndex index;
    private final Cells cells;

    TableReading(GuardedZip zip, TableIndex index, Cells cells) {
        this.zip = zip;
        this.index = index;
        this.cells = cells;
    }

    /** @throws MalformedException when something is not as it should be; the message names the place */
    void read(String table, int keys, TablesZip.Each each) throws IOException, NotTablesException {
        Map<Column, InnerRows> inner = inner(table, 0);
        rows(table, keys, row -> {
            List<String> own = row.cells().subList(0, keys);
            each.take(own, value(table, row, keys, own.get(0), inner));
        });
        inner.values().forEach(InnerRows::checkAllTaken);
    }

    private Map<Column, InnerRows> inner(String table, int depth) throws IOException, NotTablesException {
        Map<Column, InnerRows> inner = new LinkedHashMap<>();
        for (Column column : index.columns(table)) {
            boolean holds = column.kind() == Kind.LIST || column.kind() == Kind.MAP;
            if (holds && index.has(column.innerTable(table))) {
                inner.put(column, innerRows(column.innerTable(table), depth + 1, column.kind() == Kind.MAP));
            } else if (holds) {
                inner.put(column, new InnerRows(column.innerTable(table)));
            }
        }
        return inner;
    }

    private InnerRows innerRows(String table, int depth, boolean isMap) throws IOException, NotTablesException {
        Map<Column, InnerRows> further = inner(table, depth);
        var gathered = new InnerRows(table);
        int keys = 1 + depth + (isMap ? 1 : 0);
        rows(table, keys, row -> {
            String owner = String.join(WITHIN, row.cells().subList(0, depth));
            int at = place(table, row, depth);
            String key = isMap ? Cells.textOf(row.cells().get(depth + 1)) : "";
            gathered.add(owner, at, key, value(table, row, keys, owner + WITHIN + at, further));
        });
        further.values().forEach(InnerRows::checkAllTaken);
        return gathered;
    }

    private static int place(String table, CsvRow row, int cell) {
        try {
            return Integer.parseInt(row.cell(cell));
        } catch (NumberFormatException e) {
            throw TableIndex.malformed(table, row.line());
        }
    }

    private interface EachRow {
        void take(CsvRow row) throws IOException;
    }

    /** Blank rows at the end of a table are spreadsheets' habit. */
    private void rows(String table, int keys, EachRow each) throws IOException, NotTablesException {
        int width = keys + index.columns(table).size();
        try (CsvRows rows = zip.rows(table)) {
            Optional<CsvRow> header = rows.next();
            if (header.isEmpty() || !isHeader(header.get(), table, keys)) {
                throw new MalformedException(Bundle.TableReading_header(table));
            }
            for (Optional<CsvRow> row = rows.next(); row.isPresent(); row = rows.next()) {
                if (!row.get().isBlank()) {
                    each.take(filled(row.get(), table, width));
                }
            }
        } catch (BrokenRowException e) {
            throw TableIndex.malformed(table, e.line());
        }
    }

    private boolean isHeader(CsvRow header, String table, int keys) {
        List<String> names = index.columns(table).stream().map(Column::name).toList();
        return header.cells().size() >= keys + names.size()
                && header.cells().subList(keys, keys + names.size()).equals(names);
    }

    private static CsvRow filled(CsvRow row, String table, int width) {
        if (row.cells().size() > width
                && !new CsvRow(1, row.cells().subList(width, row.cells().size())).isBlank()) {
            throw TableIndex.malformed(table, row.line());
        }
        List<String> filled = new ArrayList<>(row.cells());
        while (filled.size() < width) {
            filled.add("");
        }
        return new CsvRow(row.line(), filled);
    }

    private Json value(String table, CsvRow row, int keys, String owner, Map<Column, InnerRows> inner) {
        var building = new ValueBuilding();
        List<Column> columns = index.columns(table);
        for (int i = 0; i < columns.size(); i++) {
            Column column = columns.get(i);
            String cell = row.cells().get(keys + i);
            try {
                value(cell, column, owner, inner.get(column)).ifPresent(json -> building.put(column.path(), json));
            } catch (MalformedException e) {
                throw new MalformedException(
                        Bundle.TableReading_cell(table, String.valueOf(row.line()), column.name(), e.getMessage()), e);
            }
        }
        return building.value();
    }

    private Optional<Json> value(String cell, Column column, String owner, InnerRows items) {
        if (items == null || cell.isEmpty() || Cells.isJson(cell)) {
            return cells.value(cell, column.kind());
        }
        return Optional.of(items.take(owner, Cells.count(cell, column.kind()), column.kind()));
    }
}
