package org.glintery.charts.picture;

import com.twelvemonkeys.imageio.plugins.jpeg.JPEGImageReaderSpi;
import com.twelvemonkeys.imageio.plugins.tiff.BigTIFFImageReaderSpi;
import com.twelvemonkeys.imageio.plugins.tiff.TIFFImageReaderSpi;
import com.twelvemonkeys.imageio.plugins.webp.WebPImageReaderSpi;
import java.io.IOException;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.spi.IIORegistry;
import javax.imageio.spi.ImageReaderSpi;
import javax.imageio.stream.ImageInputStream;

/**
 * The readers of picture files. Those of the wrapped library are registered by hand, because the registry looks for
 * plug-ins only where the application's class loader looks. Any thread.
 */
final class PicturePlugIns {

    /** By name, so that files of other kinds, which some reader of the JDK may take, are told apart. */
    private static final String KINDS = "(?i).*(jpe?g|png|webp|tiff?|bmp|gif).*";

    static {
        IIORegistry registry = IIORegistry.getDefaultInstance();
        register(registry, new JPEGImageReaderSpi());
        register(registry, new WebPImageReaderSpi());
        register(registry, new TIFFImageReaderSpi());
        register(registry, new BigTIFFImageReaderSpi());
    }

    private PicturePlugIns() {}

    /** Only what is not there: registering again would take the reader away for a moment from whoever is reading. */
    private static void register(IIORegistry registry, ImageReaderSpi reader) {
        if (registry.getServiceProviderByClass(reader.getClass()) == null) {
            registry.registerServiceProvider(reader);
        }
    }

    /** The reader for what the stream begins with; empty when it is none of the kinds we read. */
    static Optional<ImageReader> readerOf(ImageInputStream stream) throws IOException {
        Iterator<ImageReader> readers = ImageIO.getImageReaders(stream);
        Optional<ImageReader> best = Optional.empty();
        while (readers.hasNext()) {
            ImageReader reader = readers.next();
            if (reader.getFormatName().matches(KINDS) && (best.isEmpty() || isOfLibrary(reader))) {
                best = Optional.of(reader);
            }
        }
        return best;
    }

    /** It reads what the JDK's own reader of the same kind refuses. */
    private static boolean isOfLibrary(ImageReader reader) {
        ImageReaderSpi provider = reader.getOriginatingProvider();
        return provider != null && provider.getClass().getName().startsWith("com.twelvemonkeys.");
    }
}
