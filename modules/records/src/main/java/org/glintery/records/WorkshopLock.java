package org.glintery.records;

import java.io.IOException;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.glintery.api.GlinteryException;
import org.openide.util.NbBundle.Messages;

/** Sees to it that one process has a workshop. Who it is stands in a file beside the lock. */
@Messages({
    "lock-unknown=another program",
    "lock-here=this computer",
    "# {0} - process",
    "# {1} - computer",
    "# {2} - time",
    "lock-self=process {0} on {1}, since {2}"
})
final class WorkshopLock implements AutoCloseable {
    private static final String LOCK = "workshop.lock";
    private static final String OWNER = "workshop.owner";

    /**
     * What this process has locked. Asked before the file is opened: on POSIX systems closing any channel on a file
     * gives up every lock the process has on it.
     */
    private static final Set<Path> HELD = ConcurrentHashMap.newKeySet();

    private final Path held;
    private final FileChannel channel;
    private final Path owner;

    private WorkshopLock(Path held, FileChannel channel, Path owner) {
        this.held = held;
        this.channel = channel;
        this.owner = owner;
    }

    /** Empty when somebody has it; {@link #holder} tells who. */
    static Optional<WorkshopLock> take(Path folder, Instant now) throws IOException {
        Path real = folder.toRealPath();
        if (!HELD.add(real)) {
            return Optional.empty();
        }
        Optional<WorkshopLock> taken = Optional.empty();
        try {
            taken = takeFile(real, now);
            return taken;
        } finally {
            if (taken.isEmpty()) {
                HELD.remove(real);
            }
        }
    }

    private static Optional<WorkshopLock> takeFile(Path folder, Instant now) throws IOException {
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
            return Optional.of(new WorkshopLock(folder, channel, owner));
        } catch (IOException e) {
            channel.close();
            throw e;
        }
    }

    /** Who has it, in words. */
    static String holder(Path folder) {
        try {
            return Files.readString(folder.resolve(OWNER), StandardCharsets.UTF_8)
                    .strip();
        } catch (IOException e) {
            return Bundle.lock_unknown();
        }
    }

    private static String self(Instant now) {
        String host;
        try {
            host = InetAddress.getLocalHost().getHostName();
        } catch (UnknownHostException e) {
            host = Bundle.lock_here();
        }
        String since = DateTimeFormatter.ofPattern("d MMMM uuuu HH:mm", Locale.ENGLISH)
                .withZone(ZoneId.systemDefault())
                .format(now);
        return Bundle.lock_self(Long.toString(ProcessHandle.current().pid()), host, since);
    }

    @Override
    public void close() {
        try (channel) {
            Files.deleteIfExists(owner);
        } catch (IOException e) {
            throw new GlinteryException("the workshop's lock could not be given back", e);
        } finally {
            HELD.remove(held);
        }
    }
}
