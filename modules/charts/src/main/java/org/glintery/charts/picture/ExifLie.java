package org.glintery.charts.picture;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.exif.ExifIFD0Directory;
import java.io.ByteArrayInputStream;
import java.io.IOException;

/** How a picture lies, by what the camera wrote into its file. */
final class ExifLie {

    private ExifLie() {}

    /** Upright when the file says nothing or can't be made out. */
    static Lie of(byte[] file) {
        try {
            var metadata = ImageMetadataReader.readMetadata(new ByteArrayInputStream(file), file.length);
            return metadata.getDirectoriesOfType(ExifIFD0Directory.class).stream()
                    .map(directory -> directory.getInteger(ExifIFD0Directory.TAG_ORIENTATION))
                    .filter(number -> number != null)
                    .findFirst()
                    .map(Lie::ofExif)
                    .orElse(Lie.UPRIGHT);
        } catch (ImageProcessingException | IOException e) {
            return Lie.UPRIGHT;
        }
    }
}
