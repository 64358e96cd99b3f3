package org.glintery.records;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;

/** Clears away what a failed copy left behind. */
final class Leftovers {
    private static final Logger LOG = Logger.getLogger(Leftovers.class.getName());

    private Leftovers() {}

    /** Removes a file, or a folder with all that is in it. A failure is logged: what led here is told already. */
    static void remove(Path path) {
        try {
            if (!Files.exists(path)) {
                return;
            }
            List<Path> all;
            try (Stream<Path> walk = Files.walk(path)) {
                all = walk.sorted(Comparator.reverseOrder()).toList();
            }
            for (Path one : all) {
                Files.deleteIfExists(one);
            }
        } catch (IOException e) {
            LOG.log(Level.WARNING, "could not be cleared away: " + path, e);
        }
    }
}
