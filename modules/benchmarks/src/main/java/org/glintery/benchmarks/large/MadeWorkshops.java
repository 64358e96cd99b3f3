package org.glintery.benchmarks.large;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Properties;
import java.util.stream.Stream;
import org.glintery.api.workshop.Workshop;
import org.glintery.api.workshop.Workshops;

/**
 * Workshops of each size in a folder, made when they are first needed and kept from run to run. They are never changed:
 * whoever writes takes a copy.
 */
public final class MadeWorkshops {

    private static final long SEED = 20_250_301;
    private static final String PEAK = "peak-bytes";

    private final Path folder;
    private final Path copies;
    private final Workshops workshops;
    private final PrintStream aside;

    public MadeWorkshops(Path folder, Workshops workshops, PrintStream aside) {
        this.folder = folder.resolve("made");
        this.copies = folder.resolve("copies");
        this.workshops = workshops;
        this.aside = aside;
    }

    /** A closed workshop of a size, to be read only. */
    public Path of(Size size) throws IOException {
        Path made = folder.resolve(size.name());
        if (!Files.exists(notes(size))) {
            make(size, made);
        }
        return made;
    }

    /** A copy that may be changed. */
    public Path copyOf(Size size, String name) throws IOException {
        Path from = of(size);
        Path to = copies.resolve(name);
        remove(to);
        Files.createDirectories(to);
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Path target = to.resolve(from.relativize(file).toString());
                if (Files.isRegularFile(file)) {
                    Files.copy(file, target);
                } else {
                    Files.createDirectories(target);
                }
            }
        }
        return to;
    }

    /** The most that the workshop's folder took while it was made, in bytes. */
    public long peakBytes(Size size) throws IOException {
        of(size);
        var notes = new Properties();
        try (InputStream in = Files.newInputStream(notes(size))) {
            notes.load(in);
        }
        return Long.parseLong(notes.getProperty(PEAK));
    }

    private Path notes(Size size) {
        return folder.resolve(size.name() + ".properties");
    }

    private void make(Size size, Path made) throws IOException {
        aside.println("Making a workshop of size " + size.name() + " in " + made);
        remove(made);
        Files.createDirectories(folder);
        var notes = new Properties();
        try (var watch = new SizeWatch(made)) {
            try (Workshop workshop = workshops.create(made).orThrow()) {
                if (size.kits() > 0) {
                    new LargeWorkshop(workshop, size, SEED).fill();
                }
            }
            notes.setProperty(PEAK, Long.toString(watch.peakBytes()));
        }
        try (OutputStream out = Files.newOutputStream(notes(size))) {
            notes.store(out, size.toString());
        }
    }

    private static void remove(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
    }
}
