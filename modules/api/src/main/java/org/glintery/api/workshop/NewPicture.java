package org.glintery.api.workshop;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.glintery.api.OffTheEventThread;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.Stable;
import org.glintery.api.internal.Wording;

/** A picture that was checked, with its bytes: put both into the same change. */
@Stable
public record NewPicture(Picture picture, Blob blob) {

    /**
     * Reads a file, with its name as caption. Refused with {@code unreadable}, {@code not-a-picture} or
     * {@code picture-too-large}; the text names the file. Disk; not on the event thread.
     */
    public static Result<NewPicture> read(Path file) {
        OffTheEventThread.check();
        String name = String.valueOf(file.getFileName());
        try {
            if (Files.size(file) > Blob.MOST_BYTES) {
                return Result.refused("picture-too-large", text("tooLong", name));
            }
            Result<NewPicture> checked = of(Files.readAllBytes(file), name);
            if (checked instanceof Result.Refused<NewPicture> no) {
                Refusal refusal = no.refusal();
                return Result.refused(refusal.code(), text("refused", name, refusal.text()));
            }
            return checked;
        } catch (IOException e) {
            return Result.refused("unreadable", text("unreadable", name));
        }
    }

    /** Checks bytes. Refused with {@code not-a-picture} or {@code picture-too-large}. Pure; any thread. */
    public static Result<NewPicture> of(byte[] bytes, String caption) {
        Optional<PictureFacts> facts = PictureFacts.of(bytes).filter(told -> told.kind() != PictureKind.WEBP);
        if (facts.isEmpty()) {
            return Result.refused("not-a-picture", text("notAPicture"));
        }
        if (facts.get().isTooLarge()) {
            return Result.refused(
                    "picture-too-large", text("tooLarge", facts.get().sizeWords()));
        }
        Blob blob = Blob.of(facts.get().kind().mediaType(), bytes);
        return Result.ok(new NewPicture(new Picture(blob.hash(), blob.mediaType(), caption), blob));
    }

    private static String text(String key, String... values) {
        return Wording.of(NewPicture.class, key, values);
    }
}
