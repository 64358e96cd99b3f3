package org.glintery.workbench.parts;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Locale;
import java.util.Optional;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.MemoryCacheImageInputStream;
import org.glintery.api.Result;
import org.glintery.api.Stable;
import org.glintery.api.workshop.PictureFacts;
import org.openide.util.NbBundle.Messages;

/** Reads pictures without trusting them: size is looked at before anything is unpacked. A background thread. */
@Stable
public final class PictureBytes {
    public static final long MOST_PIXELS = PictureFacts.MOST_PIXELS;

    /** @param mediaType such as {@code image/png} */
    public record Facts(int widthPx, int heightPx, String mediaType) {}

    private PictureBytes() {}

    /** What the picture says of itself; refused with {@code not-a-picture} or {@code picture-too-large}. */
    public static Result<Facts> facts(byte[] bytes) {
        return reading(bytes, (reader, facts) -> facts);
    }

    /** The picture at most as large as asked, its proportions kept; never enlarged. */
    public static Result<BufferedImage> scaled(byte[] bytes, int mostWidthPx, int mostHeightPx) {
        return reading(bytes, (reader, facts) -> scaled(reader, facts, mostWidthPx, mostHeightPx));
    }

    /**
     * As {@link #scaled}, but refused with {@code damaged-picture} where a part of a JPEG is lost: it can be drawn all the
     * same, with grey or wrong colours from there on. One that only lacks its end mark, or goes on behind it, is whole.
     */
    @Messages(
            "PictureBytes.damaged=This picture is damaged: a part of it is lost. Nothing was changed. Use another copy of it, or open it in a picture program and save it anew if what is left will do.")
    public static Result<BufferedImage> scaledWhole(byte[] bytes, int mostWidthPx, int mostHeightPx) {
        boolean[] lost = {false};
        return reading(bytes, (reader, facts) -> {
                    reader.addIIOReadWarningListener((source, warning) -> lost[0] |= tellsOfLoss(warning));
                    return scaled(reader, facts, mostWidthPx, mostHeightPx);
                })
                .then(image ->
                        lost[0] ? Result.refused("damaged-picture", Bundle.PictureBytes_damaged()) : Result.ok(image));
    }

    /**
     * The words of libjpeg, which are in no other language. "Extraneous bytes before marker" is left out: some cameras pad
     * their files so.
     */
    private static boolean tellsOfLoss(String warning) {
        String words = warning.toLowerCase(Locale.ROOT);
        return words.startsWith("corrupt jpeg data:") && !words.contains("extraneous bytes");
    }

    private static BufferedImage scaled(ImageReader reader, Facts facts, int mostWidthPx, int mostHeightPx)
            throws IOException {
        double shrink =
                Math.min(1, Math.min((double) mostWidthPx / facts.widthPx(), (double) mostHeightPx / facts.heightPx()));
        ImageReadParam param = reader.getDefaultReadParam();
        int step = Math.max(1, (int) Math.floor(0.5 / shrink)); // half the shrinking by leaving out, the rest smooth
        param.setSourceSubsampling(step, step, 0, 0);
        BufferedImage read = reader.read(0, param);
        int width = Math.max(1, (int) Math.round(facts.widthPx() * shrink));
        int height = Math.max(1, (int) Math.round(facts.heightPx() * shrink));
        return smooth(read, width, height);
    }

    private interface Use<T> {
        T read(ImageReader reader, Facts facts) throws IOException;
    }

    @Messages({
        "PictureBytes.notAPicture=This is not a picture that can be read here. Nothing was changed. Use a PNG, JPEG, WebP, TIFF, GIF or BMP file.",
        "# {0} - such as 60 000 x 60 000",
        "PictureBytes.tooLarge=This picture says it is {0} pixels, which is too large to open. Nothing was changed. Save it smaller and try again."
    })
    private static <T> Result<T> reading(byte[] bytes, Use<T> use) {
        Optional<PictureFacts> told = PictureFacts.of(bytes);
        if (told.isEmpty()) {
            return Result.refused("not-a-picture", Bundle.PictureBytes_notAPicture());
        }
        if (told.get().isTooLarge()) {
            return Result.refused(
                    "picture-too-large", Bundle.PictureBytes_tooLarge(told.get().sizeWords()));
        }
        try (var in = new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
            Optional<ImageReader> found = PictureReaders.of(in);
            if (found.isEmpty()) {
                return Result.refused("not-a-picture", Bundle.PictureBytes_notAPicture());
            }
            ImageReader reader = found.get();
            try {
                reader.setInput(in, true, true);
                int width = reader.getWidth(0);
                int height = reader.getHeight(0);
                return Result.ok(use.read(
                        reader, new Facts(width, height, told.get().kind().mediaType())));
            } finally {
                reader.dispose();
            }
        } catch (IOException | RuntimeException e) {
            // readers throw all kinds of unchecked exceptions on damaged files
            return Result.refused("not-a-picture", Bundle.PictureBytes_notAPicture());
        } catch (OutOfMemoryError e) {
            // some kinds are unpacked whole even to be drawn small; what did not fit was one array
            return Result.refused(
                    "picture-too-large", Bundle.PictureBytes_tooLarge(told.get().sizeWords()));
        }
    }

    private static BufferedImage smooth(BufferedImage read, int width, int height) {
        BufferedImage from = read;
        while (from.getWidth() > width * 2 && from.getHeight() > height * 2) {
            from = drawn(from, from.getWidth() / 2, from.getHeight() / 2);
        }
        return drawn(from, width, height);
    }

    private static BufferedImage drawn(BufferedImage from, int width, int height) {
        BufferedImage to = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB_PRE);
        Graphics2D g = to.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        g.drawImage(from, 0, 0, width, height, null);
        g.dispose();
        return to;
    }
}
