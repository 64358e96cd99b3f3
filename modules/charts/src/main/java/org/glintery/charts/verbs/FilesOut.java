package org.glintery.charts.verbs;

import java.nio.file.Path;
import java.util.Optional;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.disk.NewFile;

/** Writes files that may be there already: a script makes its chart again. */
final class FilesOut {

    private FilesOut() {}

    /** Empty when it was written; else what was there before is still there. */
    static Optional<Refusal> write(Path file, byte[] content) {
        Result<Path> written = NewFile.replace(file, out -> {
            out.write(content);
            return Result.ok(file);
        });
        return written instanceof Result.Refused<Path> no ? Optional.of(no.refusal()) : Optional.empty();
    }
}
