package org.glintery.exchange.tables;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.glintery.api.MalformedException;
import org.glintery.exchange.csv.CsvRow;
import org.glintery.exchange.csv.CsvRows;
import org.openide.util.NbBundle.Messages;

/** Which tables there are and what their columns hold, as {@code columns.csv} says. */
@Messages({"# {0} - table", "# {1} - line", "TableIndex.row={0}.csv, line {1}, is not as it should be"})
record TableIndex(Map<String, List<Column>> tables) {
    private static final int MOST_COLUMNS = 100_000;

    /** @throws MalformedException when it is not as it should be */
    static TableIndex read(GuardedZip zip) throws IOException, NotTablesException {
        Map<String, List<Column>> tables = new LinkedHashMap<>();
        try (CsvRows rows = zip.rows(TablesZip.COLUMNS)) {
            Optional<CsvRow> row = rows.next();
            if (row.isEmpty() || !row.get().cells().equals(TablesZip.COLUMNS_HEADER)) {
                throw malformed(TablesZip.COLUMNS, 1);
            }
            int count = 0;
            for (row = rows.next(); row.isPresent(); row = rows.next()) {
                if (++count > MOST_COLUMNS) {
                    throw malformed(TablesZip.COLUMNS, row.get().line());
                }
                if (!row.get().isBlank()) {
                    tables.computeIfAbsent(row.get().cell(0), table -> new ArrayList<>())
                            .add(column(row.get()));
                }
            }
        }
        return new TableIndex(tables);
    }

    private static Column column(CsvRow row) {
        try {
            Kind kind = Kind.named(row.cell(2)).orElseThrow(() -> malformed(TablesZip.COLUMNS, row.line()));
            Column.decoded(row.cell(0));
            return Column.named(row.cell(1), kind);
        } catch (IllegalArgumentException e) {
            throw malformed(TablesZip.COLUMNS, row.line());
        }
    }

    static MalformedException malformed(String table, int line) {
        return new MalformedException(Bundle.TableIndex_row(table, String.valueOf(line)));
    }

    /** The tables of documents: named by owner and type. */
    List<String> documentTables() {
        return tables.keySet().stream()
                .filter(name -> name.indexOf('.') > 0 && name.indexOf('.') == name.lastIndexOf('.'))
                .toList();
    }

    boolean has(String table) {
        return tables.containsKey(table);
    }

    List<Column> columns(String table) {
        return tables.getOrDefault(table, List.of());
    }
}
