package org.glintery.workbench.parts;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.swing.SwingUtilities;
import org.glintery.api.Result;
import org.glintery.api.Stable;
import org.glintery.api.workshop.Workshop;

/**
 * Pictures scaled for the screen, read in the background and remembered for a while. Event thread, but for the
 * reading, which is off it.
 */
@Stable
public final class PictureShelf {
    private static final Logger LOG = Logger.getLogger(PictureShelf.class.getName());
    private static final long REMEMBERED_PIXELS = 24_000_000; // about 100 MB
    private static final ExecutorService READERS = Executors.newFixedThreadPool(2, work -> {
        Thread thread = new Thread(work, "Pictures");
        thread.setDaemon(true);
        return thread;
    });
    private static final Map<Key, BufferedImage> READ = new LinkedHashMap<>(64, 0.75f, true);
    private static final Map<Key, List<Consumer<Optional<BufferedImage>>>> WAITING = new HashMap<>();

    private record Key(String hash, int widthPx, int heightPx) {}

    private PictureShelf() {}

    /**
     * The picture if it is at hand. Otherwise empty, and {@code later} is called on the event thread when it is read:
     * with nothing if the picture is missing or damaged.
     */
    public static Optional<BufferedImage> scaled(
            Workshop workshop, String hash, int widthPx, int heightPx, Consumer<Optional<BufferedImage>> later) {
        Key key = new Key(hash, widthPx, heightPx);
        Optional<BufferedImage> known = Optional.ofNullable(READ.get(key));
        if (known.isPresent()) {
            return known;
        }
        List<Consumer<Optional<BufferedImage>>> waiting = WAITING.get(key);
        if (waiting != null) {
            waiting.add(later);
            return Optional.empty();
        }
        WAITING.put(key, new ArrayList<>(List.of(later)));
        READERS.execute(() -> {
            Optional<BufferedImage> image = read(workshop, key);
            SwingUtilities.invokeLater(() -> arrived(key, image));
        });
        return Optional.empty();
    }

    private static Optional<BufferedImage> read(Workshop workshop, Key key) {
        try {
            return workshop.blob(key.hash)
                    .map(bytes -> PictureBytes.scaled(bytes, key.widthPx, key.heightPx))
                    .flatMap(
                            r -> r instanceof Result.Ok<BufferedImage> ok ? Optional.of(ok.value()) : Optional.empty());
        } catch (RuntimeException e) {
            return Optional.empty(); // the workshop was closed meanwhile
        } catch (Error e) { // such as too little memory: whoever waits for the picture must hear of it all the same
            LOG.log(Level.WARNING, "A picture could not be read", e);
            return Optional.empty();
        }
    }

    private static void forgetOldest() {
        long pixels = READ.values().stream().mapToLong(PictureShelf::pixels).sum();
        Iterator<BufferedImage> oldest = READ.values().iterator();
        while (pixels > REMEMBERED_PIXELS && oldest.hasNext()) {
            pixels -= pixels(oldest.next());
            oldest.remove();
        }
    }

    private static long pixels(BufferedImage image) {
        return (long) image.getWidth() * image.getHeight();
    }

    private static void arrived(Key key, Optional<BufferedImage> image) {
        // what could not be read is asked for again: the workshop may have been closed meanwhile, or the file is back
        image.ifPresent(read -> READ.put(key, read));
        forgetOldest();
        List<Consumer<Optional<BufferedImage>>> waiting = WAITING.remove(key);
        waiting.forEach(one -> one.accept(image));
    }
}
