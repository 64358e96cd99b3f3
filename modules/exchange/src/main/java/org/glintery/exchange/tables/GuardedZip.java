package org.glintery.exchange.tables;

import java.io.BufferedReader;
import java.io.Closeable;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Enumeration;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import org.glintery.api.workshop.Blob;
import org.glintery.exchange.csv.CsvRows;
import org.openide.util.NbBundle.Messages;

/**
 * A zip that may come from anywhere. Nothing of it is ever laid out under names of its own, yet one with names that lead out
 * of a folder is refused whole; so is what swells beyond all measure when it is unpacked.
 */
@Messages({
    "GuardedZip.none=This file is not a zip of tables. Nothing was imported.",
    "# {0} - name",
    "GuardedZip.names=This zip holds a file named {0}, which leads out of the zip. Nothing was imported; it may be meant to do harm.",
    "# {0} - name",
    "GuardedZip.bomb={0} in this zip is far too large when unpacked. Nothing was imported; it may be meant to do harm.",
    "# {0} - name",
    "GuardedZip.missing={0} is missing from this zip. Nothing was imported."
})
final class GuardedZip implements Closeable {
    private static final int BYTE_ORDER_MARK = 0xFEFF;
    private static final int MOST_CELLS = 10_000;
    /** The longest cell is a whole document of 1 MiB as JSON. */
    private static final int LONGEST_CELL = 4 << 20;

    private static final long HARMLESS_BYTES = 16L << 20;
    /** Tables of ours shrink to a twentieth; deflate itself ends at a thousandth. */
    private static final long MOST_SWELLING = 200;

    private final ZipFile zip;

    private GuardedZip(ZipFile zip) {
        this.zip = zip;
    }

    static GuardedZip open(Path file) throws IOException, NotTablesException {
        try {
            var zip = new GuardedZip(new ZipFile(file.toFile(), StandardCharsets.UTF_8));
            try {
                zip.checkNames();
                return zip;
            } catch (NotTablesException e) {
                zip.close();
                throw e;
            }
        } catch (ZipException | IllegalArgumentException e) {
            throw new NotTablesException("not-tables", Bundle.GuardedZip_none());
        }
    }

    private void checkNames() throws NotTablesException {
        Enumeration<? extends ZipEntry> entries = zip.entries();
        while (entries.hasMoreElements()) {
            String name = entries.nextElement().getName();
            boolean leadsOut = name.startsWith("/")
                    || name.contains("\\")
                    || name.contains(":")
                    || Arrays.asList(name.split("/")).contains("..");
            if (leadsOut) {
                throw new NotTablesException("unsafe-names", Bundle.GuardedZip_names(name));
            }
        }
    }

    /** The rows of a table, its header first. */
    CsvRows rows(String table) throws IOException, NotTablesException {
        ZipEntry entry = entry(table + TablesZip.ENDING);
        long most = Math.max(HARMLESS_BYTES, entry.getCompressedSize() * MOST_SWELLING);
        Reader reader = new BufferedReader(new InputStreamReader(
                new Measured(zip.getInputStream(entry), most, entry.getName()),
                StandardCharsets.UTF_8
                        .newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT)));
        reader.mark(1);
        if (reader.read() != BYTE_ORDER_MARK) {
            reader.reset();
        }
        return new CsvRows(reader, ',', MOST_CELLS, LONGEST_CELL);
    }

    byte[] picture(String name) throws IOException, NotTablesException {
        try (InputStream in = new Measured(zip.getInputStream(entry(name)), Blob.MOST_BYTES, name)) {
            return in.readAllBytes();
        }
    }

    private ZipEntry entry(String name) throws NotTablesException {
        ZipEntry entry = zip.getEntry(name);
        if (entry == null) {
            throw new NotTablesException("damaged", Bundle.GuardedZip_missing(name));
        }
        return entry;
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }

    /** A stream that gave more than it may. */
    static final class TooLargeException extends IOException {
        private static final long serialVersionUID = 1L;

        TooLargeException(String name) {
            super(Bundle.GuardedZip_bomb(name));
        }
    }

    private static final class Measured extends FilterInputStream {
        private final String name;
        private long left;

        Measured(InputStream in, long most, String name) {
            super(in);
            this.left = most;
            this.name = name;
        }

        @Override
        public int read() throws IOException {
            int one = super.read();
            count(one < 0 ? 0 : 1);
            return one;
        }

        @Override
        public int read(byte[] some, int from, int length) throws IOException {
            int read = super.read(some, from, length);
            count(Math.max(0, read));
            return read;
        }

        private void count(int read) throws TooLargeException {
            left -= read;
            if (left < 0) {
                throw new TooLargeException(name);
            }
        }
    }
}
