package org.glintery.stash.verbs;

import java.nio.file.Path;
import java.util.Optional;
import org.glintery.api.Result;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.PictureIntake;

/** The picture that a verb was told of; nothing else is kept as one. */
final class CoverPicture {

    private CoverPicture() {}

    static Result<Optional<Blob>> of(VerbCall call) {
        Optional<Path> path = call.value("cover").map(call::path);
        return path.isEmpty()
                ? Result.ok(Optional.empty())
                : call.workshop()
                        .find(PictureIntake.class)
                        .orElseThrow()
                        .read(path.get())
                        .then(cover -> Result.ok(Optional.of(cover.blob())));
    }
}
