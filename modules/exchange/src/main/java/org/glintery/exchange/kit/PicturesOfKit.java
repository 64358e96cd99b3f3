package org.glintery.exchange.kit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.glintery.api.Result;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.NewPicture;
import org.glintery.api.workshop.Picture;
import org.glintery.api.workshop.PictureFacts;
import org.glintery.api.workshop.PictureIntake;
import org.openide.util.NbBundle.Messages;

/** Gathers the pictures that a kit file holds or names. Used once. */
@Messages({
    "# {0} - file name",
    "PicturesOfKit.outside=The picture {0} does not lie beside the kit. Nothing was imported; name pictures by their own names only.",
    "# {0} - file name",
    "PicturesOfKit.missing=The picture {0} is not beside the kit or can''t be read. Nothing was imported; put it there or take it out of the kit.",
    "# {0} - file name",
    "PicturesOfKit.none={0} is not a picture that can be shown here. Nothing was imported; take it out of the kit.",
    "# {0} - file name",
    "PicturesOfKit.tooLarge={0} is larger than 64 MiB. Nothing was imported; make it smaller.",
    "# {0} - file name",
    "# {1} - such as 60 000 x 60 000",
    "PicturesOfKit.tooWide={0} says it is {1} pixels, which is too large to open. Nothing was imported; save it smaller.",
    "PicturesOfKit.inIt=A picture in the file"
})
final class PicturesOfKit {
    private final Path folder;
    private final PictureIntake intake;
    private final Map<String, Blob> blobs = new LinkedHashMap<>();

    /** @param folder where the kit file lies */
    PicturesOfKit(Path folder, PictureIntake intake) {
        this.folder = folder;
        this.intake = intake;
    }

    /** Every picture once. */
    List<Blob> blobs() {
        return List.copyOf(blobs.values());
    }

    /** A picture that is told twice, such as by its bytes and by its name, is one, with the first caption that says anything. */
    List<Picture> take(List<PictureInFile> told) throws NotAKitException {
        Map<String, Picture> pictures = new LinkedHashMap<>();
        for (PictureInFile one : told) {
            byte[] bytes = one.file().isPresent()
                    ? beside(one.file().get())
                    : decoded(one.bytes().orElse(""));
            String name = one.file().orElse(Bundle.PicturesOfKit_inIt());
            PictureFacts facts = PictureFacts.of(bytes)
                    .orElseThrow(() -> new NotAKitException("not-a-picture", Bundle.PicturesOfKit_none(name)));
            if (facts.isTooLarge()) {
                throw new NotAKitException("picture-too-large", Bundle.PicturesOfKit_tooWide(name, facts.sizeWords()));
            }
            if (!(intake.of(bytes, one.caption().orElse("")) instanceof Result.Ok<NewPicture> taken)) {
                throw new NotAKitException("not-a-picture", Bundle.PicturesOfKit_none(name));
            }
            Blob blob = taken.value().blob();
            blobs.putIfAbsent(blob.hash(), blob);
            pictures.merge(
                    blob.hash(),
                    taken.value().picture(),
                    (first, again) -> first.caption().isBlank() ? again : first);
        }
        return List.copyOf(pictures.values());
    }

    private static byte[] decoded(String base64) throws NotAKitException {
        try {
            return Base64.getMimeDecoder().decode(base64);
        } catch (IllegalArgumentException e) {
            throw new NotAKitException("not-a-picture", Bundle.PicturesOfKit_none(Bundle.PicturesOfKit_inIt()));
        }
    }

    /** Links are followed before it is asked whether the file lies beside the kit. */
    private byte[] beside(String name) throws NotAKitException {
        if (name.contains("\\") || name.contains(":") || name.startsWith("/")) {
            throw new NotAKitException("picture-outside", Bundle.PicturesOfKit_outside(name));
        }
        try {
            Path home = folder.toRealPath();
            Path named = home.resolve(name).normalize();
            if (!named.startsWith(home) || !named.toRealPath().startsWith(home)) {
                throw new NotAKitException("picture-outside", Bundle.PicturesOfKit_outside(name));
            }
            if (Files.size(named) > Blob.MOST_BYTES) {
                throw new NotAKitException("too-large", Bundle.PicturesOfKit_tooLarge(name));
            }
            return Files.readAllBytes(named);
        } catch (IOException | InvalidPathException e) {
            throw new NotAKitException("picture-missing", Bundle.PicturesOfKit_missing(name));
        }
    }
}
