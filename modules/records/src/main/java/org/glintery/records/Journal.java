package org.glintery.records;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.zip.CRC32;

/**
 * What was changed since the database was last closed in order, one record a change, each synced before the change counts
 * as made. H2 alone is not enough: once it uses freed parts of its file again, some 45 s after opening, a killed process
 * can cost it its newest commits in spite of every sync. Opening brings the database up to what stands here.
 *
 * <p>A record is its length, its CRC-32 and its bytes. A record that is cut short was never answered for and is dropped.
 * Writer thread.
 */
final class Journal implements AutoCloseable {
    static final String FILE = "glintery.journal";
    private static final int HEAD = 2 * Integer.BYTES;

    private final FileChannel channel;
    private long end;
    private long beforeLast;

    /** Takes records in the order they were written. */
    interface Reader {
        void record(byte[] bytes) throws IOException;
    }

    private Journal(FileChannel channel) {
        this.channel = channel;
    }

    /** Opens the journal of a workshop, a new one if there is none, and hands over what it holds. */
    static Journal open(Path folder, Reader reader) throws IOException {
        FileChannel channel = FileChannel.open(
                folder.resolve(FILE), StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
        try {
            var journal = new Journal(channel);
            journal.read(reader);
            channel.truncate(journal.end);
            return journal;
        } catch (IOException | RuntimeException e) {
            channel.close();
            throw e;
        }
    }

    private void read(Reader reader) throws IOException {
        long size = channel.size();
        while (end + HEAD <= size) {
            ByteBuffer head = filled(end, HEAD);
            int length = head.getInt();
            int crc = head.getInt();
            if (length <= 0 || end + HEAD + length > size) {
                return;
            }
            byte[] bytes = filled(end + HEAD, length).array();
            if (crc(bytes) != crc) {
                return;
            }
            reader.record(bytes);
            end += HEAD + length;
        }
    }

    private ByteBuffer filled(long from, int length) throws IOException {
        ByteBuffer buffer = ByteBuffer.allocate(length);
        while (buffer.hasRemaining() && channel.read(buffer, from + buffer.position()) >= 0) {
            // a file may be read in parts
        }
        return buffer.flip();
    }

    /** Adds a record and returns once the disk has it. When it can't, the journal is as it was. */
    void append(byte[] bytes) throws IOException {
        ByteBuffer buffer = ByteBuffer.allocate(HEAD + bytes.length);
        buffer.putInt(bytes.length).putInt(crc(bytes)).put(bytes).flip();
        try {
            for (long at = end; buffer.hasRemaining(); at = end + buffer.position()) {
                channel.write(buffer, at);
            }
            channel.force(false);
        } catch (IOException e) {
            channel.truncate(end);
            throw e;
        }
        beforeLast = end;
        end += HEAD + bytes.length;
    }

    /** Takes the last record back: its change was not made after all. */
    void takeBackLast() throws IOException {
        end = beforeLast;
        channel.truncate(end);
        channel.force(false);
    }

    /** Forgets everything: the database was closed in order and holds it all. */
    void clear() throws IOException {
        if (end > 0) {
            end = 0;
            beforeLast = 0;
            channel.truncate(0);
            channel.force(false);
        }
    }

    private static int crc(byte[] bytes) {
        var crc = new CRC32();
        crc.update(bytes);
        return (int) crc.getValue();
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
