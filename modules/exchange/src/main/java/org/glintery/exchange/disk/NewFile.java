package org.glintery.exchange.disk;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Locale;
import org.glintery.api.OffTheEventThread;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.openide.util.NbBundle.Messages;

/** Makes a file that is not there yet. */
@Messages({
    "# {0} - file",
    "file-exists=There is a file at {0} already. It was left as it is; choose another name.",
    "# {0} - file",
    "file-no-folder=There is no folder for {0}. Nothing was written; choose another place.",
    "file-full=The disk is full. Nothing was kept; make room and try again.",
    "file-read-only=This folder can''t be written to. Nothing was written; choose another folder or ask for the right to write.",
    "# {0} - the system's words",
    "file-failed=The disk could not be used ({0}). Nothing was kept; try another place."
})
public final class NewFile {
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
        try (OutputStream out = new BufferedOutputStream(
                Files.newOutputStream(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE), 1 << 16)) {
            Result<T> result = filled(file, out, writing);
            if (result instanceof Result.Refused<T>) {
                Files.deleteIfExists(file);
            }
            return result;
        } catch (FileAlreadyExistsException e) {
            return Result.refused("file-exists", Bundle.file_exists(file));
        } catch (NoSuchFileException e) {
            return Result.refused("no-folder", Bundle.file_no_folder(file));
        } catch (IOException e) {
            return Result.refused(refusal(e));
        }
    }

    private static <T> Result<T> filled(Path file, OutputStream out, Writing<T> writing) throws IOException {
        try {
            Result<T> result = writing.to(out);
            out.flush();
            return result;
        } catch (IOException | UncheckedIOException e) {
            Files.deleteIfExists(file);
            return Result.refused(refusal(e));
        } catch (RuntimeException e) {
            Files.deleteIfExists(file);
            throw e;
        }
    }

    private static Refusal refusal(Exception failure) {
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
        return new Refusal("disk", Bundle.file_failed(words));
    }
}
