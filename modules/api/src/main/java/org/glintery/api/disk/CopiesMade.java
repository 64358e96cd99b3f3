package org.glintery.api.disk;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;

/**
 * Which copies a workshop made of itself, and where: a small file beside its database. It is no document, since a copy is
 * no change; and it doesn't lie with the copies, where another workshop of the same name may write too. Disk.
 */
final class CopiesMade {
    static final String FILE = "copies.properties";
    private static final Logger LOG = Logger.getLogger(CopiesMade.class.getName());
    private static final String BETWEEN = "/"; // in no file name

    /**
     * In one folder.
     *
     * @param revision the workshop's when the last one was made
     * @param files the names of those that were not removed yet, the last one at the end
     */
    record In(Instant at, long revision, List<String> files) {
        In {
            files = List.copyOf(files);
        }

        In and(Instant later, long newer, String file) {
            List<String> all = new ArrayList<>(files);
            all.remove(file);
            all.add(file);
            return new In(later, newer, all);
        }

        In without(List<String> removed) {
            return new In(
                    at,
                    revision,
                    files.stream().filter(name -> !removed.contains(name)).toList());
        }
    }

    private final Path file;

    CopiesMade(Path workshop) {
        file = workshop.resolve(FILE);
    }

    /** Empty before the first one there, and when the file was damaged. */
    Optional<In> in(Path folder) {
        Properties all = read();
        try {
            return all.containsKey("at:" + folder)
                    ? Optional.of(new In(
                            Instant.parse(all.getProperty("at:" + folder)),
                            Long.parseLong(all.getProperty("revision:" + folder, "")),
                            Stream.of(all.getProperty("files:" + folder, "").split(BETWEEN))
                                    .filter(name -> !name.isEmpty())
                                    .toList()))
                    : Optional.empty();
        } catch (DateTimeException | NumberFormatException e) {
            LOG.log(Level.INFO, "The copies that were made can't be read", e);
            return Optional.empty();
        }
    }

    /** The copies stand also when this can't be remembered. */
    void remember(Path folder, In copies) {
        Properties all = read();
        all.setProperty("at:" + folder, copies.at().toString());
        all.setProperty("revision:" + folder, Long.toString(copies.revision()));
        all.setProperty("files:" + folder, String.join(BETWEEN, copies.files()));
        try (Writer out = Files.newBufferedWriter(file)) {
            all.store(out, null);
        } catch (IOException e) {
            LOG.log(Level.INFO, "The copies that were made could not be remembered", e);
        }
    }

    private Properties read() {
        Properties all = new Properties();
        if (Files.isRegularFile(file)) {
            try (Reader in = Files.newBufferedReader(file)) {
                all.load(in);
            } catch (IOException | IllegalArgumentException e) {
                LOG.log(Level.INFO, "The copies that were made can't be read", e);
            }
        }
        return all;
    }
}
