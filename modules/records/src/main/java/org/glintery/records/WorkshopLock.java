package org.glintery.records;

import java.io.IOException;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Optional;

/** Sees to it that one process has a workshop. Who it is stands in a file beside the lock. */
final class WorkshopLock implements AutoCloseable {
    private static final String LOCK = "workshop.lock";
    private static final String OWNER = "workshop.owner";

    private final FileChannel channel;
    private final Path owner;

    private WorkshopLock(FileChannel channel, Path owner) {
        this.channel = channel;
        this.owner = owner;
    }

    /** Empty when somebody has it; {@link #holder} tells who. */
    static Optional<WorkshopLock> take(Path folder, Instant now) throws IOException {
        FileChannel channel = FileChannel.open(
                folder.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE, StandardOpenOption.READ);
        try {
            FileLock lock = channel.tryLock();
            if (lock == null) {
                channel.close();
                return Optional.empty();
            }
            Path owner = folder.resolve(OWNER);
            Files.writeString(owner, self(now), StandardCharsets.UTF_8);
            return Optional.of(new WorkshopLock(channel, owner));
        } catch (OverlappingFileLockException e) {
            channel.close();
            return Optional.empty();
        } catch (IOException e) {
            channel.close();
            throw e;
        }
    }

    /** Who has it, in words. */
    static String holder(Path folder) {
        try {
            return Files.readString(folder.resolve(OWNER), StandardCharsets.UTF_8).strip();
        } catch (IOException e) {
            return "another program";
        }
    }

    private static String self(Instant now) {
        String host;
        try {
            host = InetAddress.getLocalHost().getHostName();
        } catch (UnknownHostException e) {
            host = "this computer";
        }
        String since = DateTimeFormatter.ofPattern("d MMMM uuuu HH:mm", java.util.Locale.ENGLISH)
                .withZone(ZoneId.systemDefault())
                .format(now);
        return "process " + ProcessHandle.current().pid() + " on " + host + ", since " + since;
    }

    @Override
    public void close() {
        try {
            Files.deleteIfExists(owner);
            channel.close();
        } catch (IOException e) {
            throw new org.glintery.api.GlinteryException("the workshop's lock could not be given back", e);
        }
    }
}
