package org.glintery.charts.picture;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;
import org.glintery.api.OffTheEventThread;
import org.glintery.api.Result;
import org.glintery.api.ledger.Balance;
import org.glintery.api.workshop.PictureFacts;
import org.openide.util.NbBundle.Messages;

/**
 * Reads a picture from a file: PNG, JPEG, WebP, TIFF, BMP or GIF, the first one of several. It is turned as its Exif says
 * and taken in its embedded colours. Any thread but the event thread.
 */
@Messages({
    "PictureFile.ofNoKind=This is no picture of a kind that can be read. PNG, JPEG, WebP, TIFF, BMP and GIF can be.",
    "PictureFile.broken=The picture's file is damaged and can't be read. Nothing was made of it; save or copy it anew.",
    "# {0} - pixels across and down",
    "PictureFile.tooLarge=The picture is {0} pixels, which is too large to be read. Nothing was made; make it smaller first.",
    "# {0} - pixels across",
    "# {1} - pixels down",
    "# {2} - pixel",
    "PictureFile.thinned=The picture is very large, {0} x {1} pixels: of every {2} only one was used each way.",
    "PictureFile.damaged=The picture's file is damaged. What could be read of it was used; look at it before you go on."
})
public final class PictureFile {

    /** More are thinned out, so that the memory stays within bounds. */
    private static final long MOST_PIXELS_HELD = 50_000_000;

    private PictureFile() {}

    /**
     * The picture, with warnings where it could not be taken as it is.
     *
     * @throws IllegalStateException on the event thread
     */
    public static Result<SourcePicture> read(byte[] file) {
        OffTheEventThread.check();
        Optional<PictureFacts> facts = PictureFacts.of(file);
        if (facts.isPresent() && facts.get().isTooLarge()) {
            return Result.refused(
                    "picture-too-large", Bundle.PictureFile_tooLarge(facts.get().sizeWords()));
        }
        ImageReader reader = null;
        try (ImageInputStream stream = new MemoryCacheImageInputStream(new ByteArrayInputStream(file))) {
            Optional<ImageReader> found = PicturePlugIns.readerOf(stream);
            if (found.isEmpty()) {
                return Result.refused("picture-of-no-kind", Bundle.PictureFile_ofNoKind());
            }
            reader = found.get();
            reader.setInput(stream, true, false);
            return read(reader, file);
        } catch (IOException | RuntimeException e) {
            // Readers throw all kinds of exceptions at broken files: index, negative size, null.
            return Result.refused("picture-broken", Bundle.PictureFile_broken());
        } finally {
            if (reader != null) {
                reader.dispose();
            }
        }
    }

    private static Result<SourcePicture> read(ImageReader reader, byte[] file) throws IOException {
        int width = reader.getWidth(0);
        int height = reader.getHeight(0);
        long pixels = (long) width * height;
        List<String> warnings = new ArrayList<>();
        ImageReadParam param = reader.getDefaultReadParam();
        Optional<ColourProfile> profile = EmbeddedProfile.chosen(reader, param);
        int step = (int) Math.ceil(Math.sqrt((double) pixels / MOST_PIXELS_HELD));
        if (step > 1) {
            param.setSourceSubsampling(step, step, step / 2, step / 2);
            warnings.add(
                    Bundle.PictureFile_thinned(Balance.grouped(width), Balance.grouped(height), String.valueOf(step)));
        }
        boolean[] damaged = {false};
        reader.addIIOReadWarningListener((source, warning) -> damaged[0] = true);
        BufferedImage image = reader.read(0, param);
        if (damaged[0]) {
            warnings.add(Bundle.PictureFile_damaged());
        }
        return Result.ok(SourcePicture.of(image, profile.orElse(ColourProfile.SRGB), ExifLie.of(file)), warnings);
    }
}
