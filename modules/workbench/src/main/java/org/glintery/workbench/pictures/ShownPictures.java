package org.glintery.workbench.pictures;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.glintery.api.OffTheEventThread;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.NewPicture;
import org.glintery.api.workshop.Picture;
import org.glintery.api.workshop.PictureFacts;
import org.glintery.api.workshop.PictureIntake;
import org.glintery.workbench.parts.PictureBytes;
import org.openide.util.NbBundle.Messages;

/** Takes in what the window can draw: each picture is drawn small once, by the readers that draw it later. */
@Messages({
    "# {0} - file",
    "ShownPictures.unreadable={0} can''t be read. Nothing was changed; look whether it is there and may be read.",
    "# {0} - file",
    "ShownPictures.tooLong={0} is larger than 64 MiB. Nothing was changed; save it smaller and try again.",
    "# {0} - file",
    "# {1} - what is wrong with it",
    "ShownPictures.refused={0}: {1}"
})
final class ShownPictures implements PictureIntake {
    private static final int TRIED_AT_PX = 64;

    @Override
    public Result<NewPicture> read(Path file) {
        OffTheEventThread.check();
        String name = String.valueOf(file.getFileName());
        try {
            if (Files.size(file) > Blob.MOST_BYTES) {
                return Result.refused("picture-too-large", Bundle.ShownPictures_tooLong(name));
            }
            Result<NewPicture> checked = of(Files.readAllBytes(file), name);
            if (checked instanceof Result.Refused<NewPicture> no) {
                Refusal refusal = no.refusal();
                return Result.refused(refusal.code(), Bundle.ShownPictures_refused(name, refusal.text()));
            }
            return checked;
        } catch (IOException e) {
            return Result.refused("unreadable", Bundle.ShownPictures_unreadable(name));
        }
    }

    @Override
    public Result<NewPicture> of(byte[] bytes, String caption) {
        OffTheEventThread.check();
        Result<BufferedImage> drawn = PictureBytes.scaledWhole(bytes, TRIED_AT_PX, TRIED_AT_PX);
        return drawn.then(small -> {
            // a picture that was drawn has told its kind
            String mediaType = PictureFacts.of(bytes).orElseThrow().kind().mediaType();
            Blob blob = Blob.of(mediaType, bytes);
            return Result.ok(new NewPicture(new Picture(blob.hash(), mediaType, caption), blob));
        });
    }
}
