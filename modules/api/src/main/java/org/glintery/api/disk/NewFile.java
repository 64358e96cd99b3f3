package org.glintery.api.disk;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Locale;
import java.util.UUID;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.glintery.api.GlinteryException;
import org.glintery.api.OffTheEventThread;
import org.glintery.api.Preview;
import org.glintery.api.Refusal;
import org.glintery.api.Result;

/** Makes a file anew. It appears under its name once it is whole and on the disk, or not at all. */
@Preview(since = "1.0")
public final class NewFile {
    private static final Logger LOG = Logger.getLogger(NewFile.class.getName());

    private NewFile() {}

    /** Fills a file. */
    public interface Writing<T> {
        Result<T> to(OutputStream out) throws IOException;
    }

    /**
     * Refused with {@code file-exists}, {@code no-folder}, {@code read-only}, {@code disk-full} or {@code disk}, or as the
     * writing refuses; no file is left then.
     *
     * @throws IllegalStateException on the event thread
     */
    public static <T> Result<T> write(Path file, Writing<T> writing) {
        OffTheEventThread.check();
        if (Files.exists(file)) {
            return Result.refused("file-exists", text("exists", file));
        }
        return made(file, writing, (part, whole) -> Files.move(part, whole));
    }

    /**
     * As {@link #write}, but a file that is there is kept until the new one is whole, and then gives way to it in one step.
     * Refused with {@code is-folder} where a folder has the name.
     *
     * @throws IllegalStateException on the event thread
     */
    public static <T> Result<T> replace(Path file, Writing<T> writing) {
        OffTheEventThread.check();
        if (Files.isDirectory(file)) {
            return Result.refused("is-folder", text("isFolder", file));
        }
        return made(file, writing, (part, whole) -> Files.move(part, whole, StandardCopyOption.ATOMIC_MOVE));
    }

    private interface Naming {
        void name(Path part, Path whole) throws IOException;
    }

    private static <T> Result<T> made(Path file, Writing<T> writing, Naming naming) {
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            return Result.refused("no-folder", text("noFolder", folder == null ? file : folder));
        }
        Path part = file.resolveSibling(file.getFileName() + "." + UUID.randomUUID() + ".part");
        try {
            Result<T> result = filled(part, writing);
            if (result instanceof Result.Ok<T>) {
                naming.name(part, file);
                FolderNames.sync(folder);
            }
            return result;
        } catch (FileAlreadyExistsException e) {
            return Result.refused("file-exists", text("exists", file));
        } catch (IOException | GlinteryException | UncheckedIOException e) {
            return Result.refused(refusal(file, e));
        } finally {
            remove(part);
        }
    }

    private static <T> Result<T> filled(Path part, Writing<T> writing) throws IOException {
        try (FileChannel channel = FileChannel.open(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            var out = new KeptOpen(Channels.newOutputStream(channel));
            Result<T> result = writing.to(out);
            out.flush();
            channel.force(true);
            return result;
        }
    }

    /** Stays open when the writing is done with it: it has to be synced yet. */
    private static final class KeptOpen extends BufferedOutputStream {
        KeptOpen(OutputStream out) {
            super(out, 1 << 16);
        }

        @Override
        public void close() throws IOException {
            flush();
        }
    }

    private static void remove(Path part) {
        try {
            Files.deleteIfExists(part);
        } catch (IOException e) {
            LOG.log(Level.WARNING, "could not be cleared away: " + part, e);
        }
    }

    private static Refusal refusal(Path file, Exception failure) {
        Throwable cause = failure instanceof IOException || failure.getCause() == null ? failure : failure.getCause();
        String words = words(cause);
        String lower = words.toLowerCase(Locale.ROOT);
        if (lower.contains("no space left") || lower.contains("not enough space") || lower.contains("disk full")) {
            return new Refusal("disk-full", text("full"));
        }
        if (cause instanceof AccessDeniedException
                || lower.contains("permission denied")
                || lower.contains("read-only")) {
            return new Refusal("read-only", text("readOnly"));
        }
        return new Refusal("disk", text("failed", file, words));
    }

    /** The system's words, without the name that the file had while it was written. */
    private static String words(Throwable cause) {
        boolean reasoned = cause instanceof FileSystemException named && named.getReason() != null;
        return String.valueOf(reasoned ? ((FileSystemException) cause).getReason() : cause.getMessage());
    }

    private static String text(String key, Object... values) {
        return DiskTexts.text("NewFile." + key, values);
    }
}
