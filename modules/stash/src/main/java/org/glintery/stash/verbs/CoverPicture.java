package org.glintery.stash.verbs;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import org.glintery.api.Result;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.workshop.Blob;

/** Reads a picture's head, so that nothing else is kept as one, and none that claims a size no screen can show. */
final class CoverPicture {

    private static final long MOST_BYTES = 64L << 20;
    private static final long MOST_PIXELS = 200_000_000;

    private CoverPicture() {}

    static Result<Optional<Blob>> of(VerbCall call) {
        Optional<Path> path = call.value("cover").map(call::path);
        if (path.isEmpty()) {
            return Result.ok(Optional.empty());
        }
        try {
            if (Files.size(path.get()) > MOST_BYTES) {
                return refused(path.get(), "is larger than 64 MiB");
            }
            return read(path.get(), Files.readAllBytes(path.get()));
        } catch (IOException e) {
            return refused(path.get(), "can't be read");
        }
    }

    private static Result<Optional<Blob>> read(Path path, byte[] bytes) {
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(bytes))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                return refused(path, "is not a picture that can be shown");
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(in, true, true);
                if ((long) reader.getWidth(0) * reader.getHeight(0) > MOST_PIXELS) {
                    return refused(path, "claims to be " + reader.getWidth(0) + " x " + reader.getHeight(0) + " pixels");
                }
                return Result.ok(Optional.of(Blob.of(reader.getOriginatingProvider().getMIMETypes()[0], bytes)));
            } finally {
                reader.dispose();
            }
        } catch (IOException | IllegalArgumentException | IndexOutOfBoundsException e) {
            return refused(path, "is not a picture that can be shown");
        }
    }

    private static Result<Optional<Blob>> refused(Path path, String why) {
        return Result.refused("not-a-picture", path.getFileName() + " " + why + ". Nothing was shelved.");
    }
}
