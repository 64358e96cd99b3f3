package org.glintery.workbench.parts;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.glintery.api.OffTheEventThread;
import org.glintery.api.Preview;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.Picture;
import org.openide.util.NbBundle.Messages;

/** Reads picture files, checked before any of them is kept. Disk; not on the event thread. */
@Preview(since = "1.0")
public final class PictureFile {
    private PictureFile() {}

    /**
     * A picture with its bytes, its file's name as caption. Refused with {@code unreadable}, {@code not-a-picture} or
     * {@code picture-too-large}; the text names the file.
     */
    @Messages({
        "# {0} - file",
        "PictureFile.unreadable={0} can''t be read. Nothing was changed; look whether it is there and may be read.",
        "# {0} - file",
        "PictureFile.tooLarge={0} is larger than 64 MiB. Nothing was changed; save it smaller and try again.",
        "# {0} - file",
        "# {1} - what is wrong with it",
        "PictureFile.refused={0}: {1}"
    })
    public static Result<PictureDrop.Taken> read(Path file) {
        OffTheEventThread.check();
        String name = String.valueOf(file.getFileName());
        try {
            if (Files.size(file) > Blob.MOST_BYTES) {
                return Result.refused("picture-too-large", Bundle.PictureFile_tooLarge(name));
            }
            Result<PictureDrop.Taken> taken = taken(Files.readAllBytes(file), name);
            if (taken instanceof Result.Refused<PictureDrop.Taken> no) {
                Refusal refusal = no.refusal();
                return Result.refused(refusal.code(), Bundle.PictureFile_refused(name, refusal.text()));
            }
            return taken;
        } catch (IOException e) {
            return Result.refused("unreadable", Bundle.PictureFile_unreadable(name));
        }
    }

    static Result<PictureDrop.Taken> taken(byte[] bytes, String caption) {
        return PictureBytes.facts(bytes).then(facts -> {
            Blob blob = Blob.of(facts.mediaType(), bytes);
            return Result.ok(new PictureDrop.Taken(new Picture(blob.hash(), facts.mediaType(), caption), blob));
        });
    }
}
