package org.glintery.records;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.zip.CRC32;
import org.glintery.api.disk.FolderNames;

/**
 * What was changed since the database was last closed in order, one record a change, each synced before the change counts
 * as made. H2 alone is not enough: once it uses freed parts of its file again, some 45 s after opening, a killed process
 * can cost it its newest commits in spite of every sync. Opening brings the database up to what stands here.
 *
 * <p>A record is its length, its CRC-32 and its bytes. A last record that is cut short was never answered for and is
 * dropped. With whole records behind it, it is damage: then nothing is touched.
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

    /** Whether a workshop's journal holds anything. */
    static boolean isUsed(Path folder) throws IOException {
        Path file = folder.resolve(FILE);
        return Files.exists(file) && Files.size(file) > 0;
    }

    /** Opens the journal of a workshop, a new one if there is none, and hands over what it holds. */
    static Journal open(Path folder, Reader reader) throws IOException {
        boolean made = Files.notExists(folder.resolve(FILE));
        FileChannel channel = FileChannel.open(
                folder.resolve(FILE), StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
        try {
            var journal = new Journal(channel);
            journal.read(reader);
            if (journal.wholeRecordsFollow()) {
                throw new DamagedJournalException();
            }
            channel.truncate(journal.end);
            if (made) {
                FolderNames.sync(folder);
            }
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

    /** Whether anything behind the last record that could be read is a record: a torn write leaves none. */
    private boolean wholeRecordsFollow() throws IOException {
        long rest = channel.size() - end;
        if (rest > Integer.MAX_VALUE - HEAD) {
            return true;
        }
        ByteBuffer tail = filled(end, (int) rest);
        for (int at = 1; at + HEAD < tail.limit(); at++) {
            int length = tail.getInt(at);
            if (length > 0
                    && length <= tail.limit() - at - HEAD
                    && crc(tail.array(), at + HEAD, length) == tail.getInt(at + Integer.BYTES)) {
                return true;
            }
        }
        return false;
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
            channel.force(false);
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
        return crc(bytes, 0, bytes.length);
    }

    private static int crc(byte[] bytes, int from, int length) {
        var crc = new CRC32();
        crc.update(bytes, from, length);
        return (int) crc.getValue();
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
