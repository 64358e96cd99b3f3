package org.glintery.exchange.tables;

import java.io.EOFException;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.zip.ZipException;
import org.glintery.api.Json;
import org.glintery.api.JsonCodec;
import org.glintery.api.MalformedException;
import org.glintery.api.Result;
import org.glintery.api.disk.NewFile;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.PictureFacts;
import org.glintery.api.workshop.Workshop;
import org.glintery.api.workshop.Workshop.CopyReport;
import org.glintery.exchange.csv.CsvRow;
import org.glintery.exchange.csv.CsvRows;
import org.openide.util.NbBundle.Messages;

/** Brings tables into an empty workshop as one change: all of it or nothing. Used once. */
@Messages({
    "# {0} - file",
    "TableImport.unreadable=The file {0} can''t be read. Nothing was imported; look whether it is there and may be read.",
    "# {0} - file",
    "TableImport.picture=the picture {0} was changed or damaged",
    "# {0} - file",
    "# {1} - such as 60 000 x 60 000",
    "TableImport.pictureTooLarge={0} says it is {1} pixels, which is too large to open. Nothing was imported; it may be meant "
            + "to do harm.",
    "TableImport.broken=the zip is damaged",
    "# {0} - sequence number",
    "TableImport.order=movements.csv is not in its order at sequence {0}",
    "# {0} - what is wrong",
    "TableImport.malformed=These tables can''t be taken in: {0}. Nothing was imported.",
    "TableImport.notEmpty=This workshop is not empty. Nothing was imported; make a new workshop and import into that."
})
final class TableImport {
    private final Workshop workshop;
    private final JsonCodec codec;
    private final Cells cells;

    TableImport(Workshop workshop, JsonCodec codec) {
        this.workshop = workshop;
        this.codec = codec;
        this.cells = new Cells(codec);
    }

    Result<CopyReport> readFile(Path file) {
        var view = workshop.view();
        if (view.documents().findAny().isPresent()
                || !view.blobs().isEmpty()
                || !view.spots().isEmpty()) {
            return Result.refused("not-empty", Bundle.TableImport_notEmpty());
        }
        if (!Files.isReadable(file) || Files.isDirectory(file)) {
            return Result.refused("unreadable", Bundle.TableImport_unreadable(file));
        }
        Path json = workshop.folder().resolve("import-" + UUID.randomUUID() + ".json");
        try {
            return NewFile.write(json, out -> converted(file, out)).then(done -> taken(file, json));
        } finally {
            json.toFile().delete();
        }
    }

    private Result<CopyReport> taken(Path file, Path json) {
        return workshop.importJson(json)
                .then(read -> Result.ok(new CopyReport(
                        file,
                        read.documents(),
                        read.movements(),
                        read.blobs(),
                        file.toFile().length())));
    }

    /** What the disk refuses while the file is written is told apart from what is wrong with the tables. */
    private Result<Path> converted(Path file, OutputStream out) throws IOException {
        try {
            convert(file, new OutputStreamWriter(out, StandardCharsets.UTF_8));
            return Result.ok(file);
        } catch (NotTablesException e) {
            return Result.refused(e.refusal());
        } catch (MalformedException e) {
            return Result.refused("damaged", Bundle.TableImport_malformed(e.getMessage()));
        } catch (GuardedZip.TooLargeException e) {
            return Result.refused("too-large", e.getMessage());
        } catch (ZipException | EOFException | CharacterCodingException e) {
            return Result.refused("damaged", Bundle.TableImport_malformed(Bundle.TableImport_broken()));
        }
    }

    private void convert(Path file, Writer writer) throws IOException, NotTablesException {
        try (GuardedZip zip = GuardedZip.open(file);
                var out = new WorkshopJson(writer, codec)) {
            TableIndex index = TableIndex.read(zip);
            var tables = new TableReading(zip, index, cells);
            List<Placed> documents = new ArrayList<>();
            for (String table : index.documentTables()) {
                documents(table, tables, documents);
            }
            documents.sort(Comparator.comparingInt(Placed::order));
            for (Placed document : documents) {
                out.document(document.owner(), document.type(), document.id(), document.version(), document.body());
            }
            out.beginMovements();
            if (index.has(TablesZip.MOVEMENTS)) {
                movements(tables, out);
            }
            out.beginPictures();
            pictures(zip, out);
        }
    }

    /** Their order is what balances follow from, so rows that were sorted otherwise are not taken. */
    private void movements(TableReading tables, WorkshopJson out) throws IOException, NotTablesException {
        long[] last = {0};
        tables.read(TablesZip.MOVEMENTS, TablesZip.MOVEMENT_KEYS.size(), (keys, value) -> {
            int sequence = Cells.count(keys.get(0), Kind.NUMBER);
            if (sequence <= last[0]) {
                throw new MalformedException(Bundle.TableImport_order(String.valueOf(sequence)));
            }
            last[0] = sequence;
            out.movement(value);
        });
    }

    /**
     * A document with its place among all of the workshop.
     *
     * @param id as it is written: whether it is one is judged with everything else
     */
    private record Placed(int order, String owner, String type, String id, Json version, Json body) {}

    /** A row that somebody added by hand has no place yet and comes last. */
    private void documents(String table, TableReading tables, List<Placed> documents)
            throws IOException, NotTablesException {
        int point = table.indexOf('.');
        String owner = Column.decoded(table.substring(0, point));
        String type = Column.decoded(table.substring(point + 1));
        tables.read(table, TablesZip.DOCUMENT_KEYS.size(), (keys, value) -> {
            Json version = cells.value(keys.get(1), Kind.NUMBER).orElse(Json.Num.of(1));
            int order = keys.get(2).isBlank() ? Integer.MAX_VALUE : Cells.count(keys.get(2), Kind.NUMBER);
            documents.add(new Placed(order, owner, type, keys.get(0), version, value));
        });
    }

    private static void pictures(GuardedZip zip, WorkshopJson out) throws IOException, NotTablesException {
        try (CsvRows rows = zip.rows(TablesZip.BLOBS)) {
            Optional<CsvRow> header = rows.next();
            if (header.isEmpty() || !header.get().cells().equals(TablesZip.BLOBS_HEADER)) {
                throw TableIndex.malformed(TablesZip.BLOBS, 1);
            }
            for (Optional<CsvRow> row = rows.next(); row.isPresent(); row = rows.next()) {
                if (!row.get().isBlank()) {
                    picture(row.get(), zip, out);
                }
            }
        }
    }

    private static void picture(CsvRow row, GuardedZip zip, WorkshopJson out) throws IOException, NotTablesException {
        if (!row.cell(2).matches(TablesZip.PICTURES + row.cell(0).replaceAll("[^0-9a-f]", "") + "\\.[a-z0-9]{1,8}")) {
            throw TableIndex.malformed(TablesZip.BLOBS, row.line());
        }
        byte[] bytes = zip.picture(row.cell(2));
        if (!Blob.hash(bytes).equals(row.cell(0))) {
            throw new MalformedException(Bundle.TableImport_picture(row.cell(2)));
        }
        Optional<PictureFacts> tooLarge = PictureFacts.of(bytes).filter(PictureFacts::isTooLarge);
        if (tooLarge.isPresent()) {
            throw new NotTablesException(
                    "picture-too-large",
                    Bundle.TableImport_pictureTooLarge(
                            row.cell(2), tooLarge.get().sizeWords()));
        }
        out.picture(row.cell(0), Cells.textOf(row.cell(1)), bytes);
    }
}
