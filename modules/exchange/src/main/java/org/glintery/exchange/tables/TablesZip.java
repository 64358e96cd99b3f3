package org.glintery.exchange.tables;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.glintery.api.Json;
import org.glintery.exchange.csv.CsvSheet;

/** The zip while it is written: its tables, the columns of all of them, and the pictures. Not safe for several threads. */
final class TablesZip {
    static final String ENDING = ".csv";
    static final String COLUMNS = "columns";
    static final String BLOBS = "blobs";
    static final String MOVEMENTS = "movements";
    static final String PICTURES = "pictures/";
    static final List<String> COLUMNS_HEADER = List.of("table", "column", "kind");
    static final List<String> BLOBS_HEADER = List.of("hash", "mediaType", "file", "bytes");
    static final List<String> DOCUMENT_KEYS = List.of("document", "version", "order");
    static final List<String> MOVEMENT_KEYS = List.of("sequence");

    private final ZipOutputStream zip;
    private final Cells cells;
    private final List<List<String>> columns = new ArrayList<>();

    TablesZip(OutputStream out, Cells cells) {
        this.zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
        this.cells = cells;
    }

    /** One thing that a table has rows for. */
    interface Each {
        void take(List<String> keys, Json value) throws IOException;
    }

    /** Hands all of one kind over, again each time it is asked. */
    interface Source {
        void forEach(Each each) throws IOException;
    }

    /** Writes the table of one kind and those of its lists and maps; nothing when there is none of that kind. */
    void tables(String name, List<String> keys, Source source) throws IOException {
        Form form = Form.ofDocuments();
        int[] count = {0};
        source.forEach((ignored, value) -> {
            form.learn(value);
            count[0]++;
        });
        if (count[0] > 0) {
            tables(List.of(TablePlan.ofDocuments(name, form)), keys, source);
        }
    }

    private void tables(List<TablePlan> chain, List<String> keys, Source source) throws IOException {
        TablePlan plan = chain.get(chain.size() - 1);
        plan.columns()
                .forEach(column -> columns.add(
                        List.of(plan.name(), column.name(), column.kind().word())));
        begin(plan.name() + ENDING);
        var sheet = new CsvSheet(zip);
        var rows = new TableRows(chain, cells, sheet);
        rows.header(keys);
        source.forEach(rows::write);
        sheet.flush();
        zip.closeEntry();
        for (TablePlan inner : plan.inner()) {
            List<TablePlan> longer = new ArrayList<>(chain);
            longer.add(inner);
            tables(longer, keys, source);
        }
    }

    /** Writes rows whose meaning is fixed. */
    void sheet(String name, List<String> header, List<List<String>> rows) throws IOException {
        begin(name + ENDING);
        var sheet = new CsvSheet(zip);
        sheet.row(header);
        for (List<String> row : rows) {
            sheet.row(row);
        }
        sheet.flush();
        zip.closeEntry();
    }

    void text(String name, String text) throws IOException {
        begin(name);
        zip.write(text.getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }

    /** Pictures are compressed already. */
    void picture(String name, byte[] bytes) throws IOException {
        zip.setLevel(Deflater.NO_COMPRESSION);
        begin(name);
        zip.write(bytes);
        zip.closeEntry();
        zip.setLevel(Deflater.DEFAULT_COMPRESSION);
    }

    /** Writes what is left; the stream stays open. */
    void finish() throws IOException {
        sheet(COLUMNS, COLUMNS_HEADER, columns);
        zip.finish();
    }

    private void begin(String name) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
    }
}
