package org.glintery.charts.verbs;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import org.glintery.api.Refusal;
import org.openide.util.NbBundle.Messages;

/** Writes whole files: beside their place first, so that a file that was there stays until the new one is complete. */
@Messages({
    "# {0} - file",
    "FilesOut.noFolder=There is no folder for {0}. It was not written; choose another place.",
    "# {0} - file",
    "FilesOut.notAllowed={0} could not be written: this folder may not be written to. Choose another place. What was there before was kept.",
    "# {0} - file",
    "# {1} - the system''s words",
    "FilesOut.failed={0} could not be written ({1}). What was there before was kept."
})
final class FilesOut {

    private FilesOut() {}

    /** Empty when it was written. */
    static Optional<Refusal> write(Path file, byte[] content) {
        Path whole = file.toAbsolutePath();
        Path beside = whole.resolveSibling(whole.getFileName() + ".new");
        try {
            Files.write(beside, content);
            Files.move(beside, whole, StandardCopyOption.REPLACE_EXISTING);
            return Optional.empty();
        } catch (NoSuchFileException e) {
            return Optional.of(new Refusal("no-folder", Bundle.FilesOut_noFolder(file)));
        } catch (AccessDeniedException e) {
            return Optional.of(new Refusal("not-written", Bundle.FilesOut_notAllowed(file)));
        } catch (IOException e) {
            remove(beside);
            return Optional.of(new Refusal("not-written", Bundle.FilesOut_failed(file, e.getMessage())));
        }
    }

    private static void remove(Path beside) {
        try {
            Files.deleteIfExists(beside);
        } catch (IOException e) {
            // the refusal that follows tells of the disk
        }
    }
}
