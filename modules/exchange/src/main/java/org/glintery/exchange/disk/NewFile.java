package org.glintery.exchange.disk;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Locale;
import java.util.UUID;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.glintery.api.OffTheEventThread;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.openide.util.NbBundle.Messages;

/** Makes a file that is not there yet. It appears under its name once it is whole and on the disk, or not at all. */
@Messages({
    "# {0} - file",
    "file-exists=There is a file at {0} already. It was left as it is; choose another name.",
    "# {0} - file",
    "file-no-folder=There is no folder for {0}. Nothing was written; choose another place.",
    "file-full=The disk is full. Nothing was kept; make room and try again.",
    "file-read-only=This folder can''t be written to. Nothing was written; choose another folder or ask for the right"
            + " to write.",
    "# {0} - file",
    "# {1} - the system's words",
    "file-failed={0} could not be written, since the disk could not be used ({1}). Nothing was kept; try another place."
})
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
            return Result.refused("file-exists", Bundle.file_exists(file));
        }
        Path part = file.resolveSibling(file.getFileName() + "." + UUID.randomUUID() + ".part");
        try {
            Result<T> result = filled(part, writing);
            if (result instanceof Result.Ok<T>) {
                Files.move(part, file);
                sync(file.toAbsolutePath().getParent());
            }
            return result;
        } catch (FileAlreadyExistsException e) {
            return Result.refused("file-exists", Bundle.file_exists(file));
        } catch (NoSuchFileException e) {
            return Result.refused("no-folder", Bundle.file_no_folder(file));
        } catch (IOException | UncheckedIOException e) {
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

    /** A file that is synced is not found after a power cut unless its name is too. Windows knows no such thing. */
    private static void sync(Path folder) throws IOException {
        if (folder.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
                channel.force(true);
            }
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
        Throwable cause = failure instanceof UncheckedIOException ? failure.getCause() : failure;
        String words = String.valueOf(cause.getMessage());
        String lower = words.toLowerCase(Locale.ROOT);
        if (lower.contains("no space left") || lower.contains("not enough space") || lower.contains("disk full")) {
            return new Refusal("disk-full", Bundle.file_full());
        }
        if (cause instanceof AccessDeniedException
                || lower.contains("permission denied")
                || lower.contains("read-only")) {
            return new Refusal("read-only", Bundle.file_read_only());
        }
        return new Refusal("disk", Bundle.file_failed(file, words));
    }
}
