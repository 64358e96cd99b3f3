package org.glintery.records;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.glintery.api.Result;
import org.glintery.api.disk.NewFile;
import org.glintery.api.workshop.Workshop.CopyReport;

/**
 * Writes a workshop into one zip: the database, and beside it everything as JSON, the pictures as they are and a page
 * that explains them, so that it can be read without this program.
 */
final class BackupZip {
    private final H2Workshop workshop;
    private final JacksonCodec codec;
    private final Clock clock;
    private final List<BackupManifest.Part> parts = new ArrayList<>();
    private final Set<String> lost = new TreeSet<>();

    BackupZip(H2Workshop workshop, JacksonCodec codec, Clock clock) {
        this.workshop = workshop;
        this.codec = codec;
        this.clock = clock;
    }

    Result<CopyReport> write(Path file) {
        Path copy = workshop.folder().resolve("backup-in-the-making.zip");
        try {
            return write(file, zip -> {
                State state = workshop.copyDatabase(copy);
                Result<JsonExport.Counts> counts = addReadable(zip, state);
                addDatabaseIn(copy, zip);
                addManifest(zip, workshop.schema().version());
                return counts;
            });
        } finally {
            Leftovers.remove(copy);
        }
    }

    /** The same with another database, which the workshop was made from. @param older closed, of another version */
    Result<CopyReport> writeWith(Path older, int version, Path file) {
        return write(file, zip -> {
            Result<JsonExport.Counts> counts = addReadable(zip, workshop.state());
            add(zip, BackupManifest.DATABASE, out -> Files.copy(older, out));
            addManifest(zip, version);
            return counts;
        });
    }

    private interface Filling {
        Result<JsonExport.Counts> fill(ZipOutputStream zip) throws IOException;
    }

    private static Result<CopyReport> write(Path file, Filling filling) {
        return NewFile.write(file, out -> {
                    var zip = new ZipOutputStream(out);
                    Result<JsonExport.Counts> counts = filling.fill(zip);
                    zip.finish();
                    return counts;
                })
                .then(counts -> counts.report(file));
    }

    /** All but the database and the manifest; warns of pictures that are not whole, which are left out. */
    private Result<JsonExport.Counts> addReadable(ZipOutputStream zip, State state) throws IOException {
        add(zip, BackupManifest.README, out -> out.write(readme().getBytes(StandardCharsets.UTF_8)));
        var pictures = new PicturesOnDisk(state, codec, workshop::blob);
        for (KeptBlob blob : state.blobs().values()) {
            Optional<byte[]> bytes = pictures.whole(blob);
            if (bytes.isPresent()) {
                add(zip, BackupManifest.picture(blob), out -> out.write(bytes.get()));
            }
        }
        lost.addAll(pictures.lost());
        var counts = new JsonExport.Counts[1];
        add(
                zip,
                BackupManifest.EXPORT,
                out -> counts[0] = new JsonExport(workshop, codec).write(out, state, pictures, false));
        return Result.ok(counts[0], pictures.warnings());
    }

    private void addDatabaseIn(Path copy, ZipOutputStream zip) throws IOException {
        try (var database = new ZipInputStream(Files.newInputStream(copy))) {
            for (ZipEntry entry = database.getNextEntry(); entry != null; entry = database.getNextEntry()) {
                if (entry.getName().endsWith(Database.FILE)) {
                    add(zip, BackupManifest.DATABASE, database::transferTo);
                }
            }
        }
    }

    private void addManifest(ZipOutputStream zip, int schema) throws IOException {
        var manifest = new BackupManifest(
                BackupManifest.FORMAT,
                BackupManifest.VERSION,
                schema,
                parts,
                Optional.of(List.copyOf(lost)).filter(l -> !l.isEmpty()));
        zip.putNextEntry(new ZipEntry(BackupManifest.NAME));
        zip.write(codec.pretty(codec.toJson(manifest)).getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }

    private interface Content {
        void writeTo(OutputStream out) throws IOException;
    }

    private void add(ZipOutputStream zip, String name, Content content) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        MessageDigest digest = PackedBody.sha256();
        var counted = new Counted(zip);
        content.writeTo(new DigestOutputStream(counted, digest));
        zip.closeEntry();
        parts.add(new BackupManifest.Part(name, counted.bytes, HexFormat.of().formatHex(digest.digest())));
    }

    /** Counts, and keeps the zip open when a part is done. */
    private static final class Counted extends FilterOutputStream {
        private long bytes;

        Counted(OutputStream out) {
            super(out);
        }

        @Override
        public void write(int one) throws IOException {
            out.write(one);
            bytes++;
        }

        @Override
        public void write(byte[] some, int from, int length) throws IOException {
            out.write(some, from, length);
            bytes += length;
        }

        @Override
        public void close() throws IOException {
            out.flush();
        }
    }

    private String readme() {
        try (InputStream in = BackupZip.class.getResourceAsStream("backup-readme.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .replace("{date}", java.time.LocalDate.now(clock).toString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
