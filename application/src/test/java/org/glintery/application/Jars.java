package org.glintery.application;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The jars of our modules in the packaged application, and of the add-ons beside it. */
final class Jars {

    private static final Path MODULES = GlinteryDo.HOME.resolve("glintery/modules");
    private static final String PREFIX = "org-glintery-";

    /** The clusters of add-ons, which are built beside the application. */
    static final Path SAMPLE_CLUSTER = cluster("addon-sample");

    static final Path SWAPS_CLUSTER = cluster("club-swaps");

    static final Path CLUB_CLUSTER = cluster("club");

    static final Path CLUB = CLUB_CLUSTER.resolve("modules/org-glintery-club.jar");

    static final Path SAMPLE = SAMPLE_CLUSTER.resolve("modules/org-glintery-addon-sample.jar");

    static final Path SWAPS = SWAPS_CLUSTER.resolve("modules/org-glintery-club-swaps.jar");

    private Jars() {}

    private static Path cluster(String addon) {
        return Path.of("../modules", addon, "target/nbm/clusters", addon)
                .toAbsolutePath()
                .normalize();
    }

    static Path of(String module) {
        return MODULES.resolve(PREFIX + module + ".jar");
    }

    /** Our modules that hold classes of ours: neither wrappers nor the branding. */
    static List<String> modules() {
        try (Stream<Path> files = Files.list(MODULES)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.startsWith(PREFIX) && name.endsWith(".jar"))
                    .map(name -> name.substring(PREFIX.length(), name.length() - 4))
                    .filter(name -> !name.startsWith("lib-") && !name.equals("branding"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
