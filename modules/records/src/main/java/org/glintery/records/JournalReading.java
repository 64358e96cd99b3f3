package org.glintery.records;

import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.glintery.api.workshop.DocRef;

/** Reads what {@link JournalWriting} wrote. */
final class JournalReading {
    private final DataInputStream in;

    private JournalReading(byte[] bytes) {
        in = new DataInputStream(new ByteArrayInputStream(bytes));
    }

    private interface Item<T> {
        T read() throws IOException;
    }

    /** @throws IOException also when the bytes are of a form that is not known here */
    static JournalEntry entry(byte[] bytes) throws IOException {
        var reading = new JournalReading(bytes);
        int form = reading.in.readByte();
        if (form != JournalWriting.FORM) {
            throw new IOException("the journal is of form " + form);
        }
        return new JournalEntry(
                reading.change(),
                new JournalEntry.NewNames(reading.names(), reading.names(), reading.names()),
                reading.list(reading::movement),
                reading.list(reading::document),
                reading.list(reading::blob));
    }

    private <T> List<T> list(Item<T> item) throws IOException {
        int size = in.readInt();
        var list = new ArrayList<T>();
        for (int i = 0; i < size; i++) {
            list.add(item.read());
        }
        return list;
    }

    private ChangeRow change() throws IOException {
        return new ChangeRow(
                in.readLong(),
                id(),
                text(),
                EpochNanos.of(in.readLong()),
                DiskCodes.CHANGES.constant(in.readByte()),
                in.readLong(),
                in.readLong(),
                in.readInt());
    }

    private JournalEntry.Some names() throws IOException {
        return new JournalEntry.Some(in.readInt(), list(this::text));
    }

    private MovementRow movement() throws IOException {
        return new MovementRow(
                in.readLong(),
                id(),
                DiskCodes.MOVEMENTS.constant(in.readByte()),
                new Effect(
                        in.readInt(),
                        in.readInt(),
                        in.readInt(),
                        in.readLong(),
                        in.readLong(),
                        in.readInt(),
                        in.readLong(),
                        in.readInt()),
                in.readInt(),
                in.readByte(),
                in.readLong(),
                in.readLong(),
                in.readInt(),
                in.readInt(),
                EpochNanos.of(in.readLong()),
                in.readLong(),
                in.readLong());
    }

    private Document document() throws IOException {
        int number = in.readInt();
        var ref = new DocRef(text(), text(), id());
        return new Document(number, ref, in.readInt(), in.readInt(), in.readBoolean() ? block() : null);
    }

    private JournalEntry.BlobChange blob() throws IOException {
        return new JournalEntry.BlobChange(new KeptBlob(text(), text(), in.readLong()), in.readBoolean());
    }

    private UUID id() throws IOException {
        return new UUID(in.readLong(), in.readLong());
    }

    private String text() throws IOException {
        return new String(block(), StandardCharsets.UTF_8);
    }

    private byte[] block() throws IOException {
        return in.readNBytes(in.readInt());
    }
}
