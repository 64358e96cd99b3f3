package org.glintery.charts.verbs;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.disk.NewFile;

/** Writes files that may be there already: a script makes its chart again. */
final class FilesOut {

    /** What goes into a file. */
    record Content(Path file, byte[] bytes) {}

    private FilesOut() {}

    /**
     * All of them or none: each is on the disk before the next is begun, and takes its name when those behind it have taken
     * theirs. Empty when they were written; else what was there before is still there.
     */
    static Optional<Refusal> write(List<Content> contents) {
        if (contents.isEmpty()) {
            return Optional.empty();
        }
        Content first = contents.get(0);
        Result<Path> written = NewFile.replace(first.file(), out -> {
            out.write(first.bytes());
            out.flush();
            return write(contents.subList(1, contents.size()))
                    .<Result<Path>>map(Result::refused)
                    .orElseGet(() -> Result.ok(first.file()));
        });
        return written instanceof Result.Refused<Path> no ? Optional.of(no.refusal()) : Optional.empty();
    }
}
