package org.glintery.stash.verbs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.glintery.api.Result;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.workshop.Blob;
import org.glintery.workbench.parts.PictureBytes;

/** The picture that a verb was told of; nothing else is kept as one. */
final class CoverPicture {

    private static final long MOST_BYTES = 64L << 20;

    private CoverPicture() {}

    static Result<Optional<Blob>> of(VerbCall call) {
        Optional<Path> path = call.value("cover").map(call::path);
        if (path.isEmpty()) {
            return Result.ok(Optional.empty());
        }
        try {
            if (Files.size(path.get()) > MOST_BYTES) {
                return unreadable(path.get(), "is larger than 64 megabytes");
            }
            byte[] bytes = Files.readAllBytes(path.get());
            return PictureBytes.facts(bytes).then(facts -> Result.ok(Optional.of(Blob.of(facts.mediaType(), bytes))));
        } catch (IOException e) {
            return unreadable(path.get(), "can't be read");
        }
    }

    private static Result<Optional<Blob>> unreadable(Path path, String why) {
        return Result.refused("unreadable", path.getFileName() + " " + why + ". Nothing was shelved.");
    }
}
