package org.glintery.records;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.UUID;
import org.glintery.api.GlinteryException;
import org.glintery.api.Result;
import org.openide.util.NbBundle.Messages;

/** Writes a file that appears under its name once it is whole and on the disk, or not at all. */
@Messages({"# {0} - file", "file-exists=There is a file at {0} already. It was left as it is; choose another name."})
final class NewFile {
    private NewFile() {}

    /** Writes the content and leaves the stream open. */
    interface Content<T> {
        T writeTo(OutputStream out) throws IOException;
    }

    static <T> Result<T> write(Path file, Content<T> content) {
        if (Files.exists(file)) {
            return Result.refused("file-exists", Bundle.file_exists(file));
        }
        Path part = file.resolveSibling(file.getFileName() + "." + UUID.randomUUID() + ".part");
        try {
            T written;
            try (FileChannel channel =
                    FileChannel.open(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
                var buffered = new BufferedOutputStream(Channels.newOutputStream(channel), 1 << 16);
                written = content.writeTo(buffered);
                buffered.flush();
                channel.force(true);
            }
            Files.move(part, file);
            FolderNames.sync(file.toAbsolutePath().getParent());
            return Result.ok(written);
        } catch (FileAlreadyExistsException e) {
            return Result.refused("file-exists", Bundle.file_exists(file));
        } catch (IOException | UncheckedIOException | GlinteryException e) {
            return Result.refused(DiskRefusals.of(e, false));
        } finally {
            Leftovers.remove(part);
        }
    }
}
