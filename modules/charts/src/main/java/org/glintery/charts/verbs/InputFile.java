package org.glintery.charts.verbs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.glintery.api.Result;
import org.glintery.api.verb.VerbCall;
import org.openide.util.NbBundle.Messages;

/** Files that verbs read. */
@Messages({
    "# {0} - file",
    "InputFile.unreadable={0} can''t be read. Nothing was made; check the name and that you may read it."
})
final class InputFile {

    private InputFile() {}

    /** The bytes of the file that an argument names. Refused with {@code no-file}. */
    static Result<byte[]> read(VerbCall call, String argument) {
        Path file = call.path(call.need(argument));
        try {
            return Result.ok(Files.readAllBytes(file));
        } catch (IOException e) {
            return Result.refused("no-file", Bundle.InputFile_unreadable(file));
        }
    }
}
