package org.glintery.application;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Classes stay small: half under 80 lines, nine in ten under 250, none over 400. */
class ClassSizeTest {

    private static final Path MODULES = Path.of("../modules");
    private static final int LEAST_FILES = 300;

    @Test
    void keepsClassesSmall() throws IOException {
        Map<Path, Long> lines = lines();
        assertThat(lines.size()).as("files read").isGreaterThanOrEqualTo(LEAST_FILES);
        assertThat(share(lines, 80)).as("share under 80 lines").isGreaterThan(.5);
        assertThat(share(lines, 250)).as("share under 250 lines").isGreaterThan(.9);
        assertThat(lines.entrySet().stream()
                        .filter(entry -> entry.getValue() > 400)
                        .map(Map.Entry::toString))
                .isEmpty();
    }

    private static double share(Map<Path, Long> lines, long under) {
        return (double) lines.values().stream().filter(count -> count < under).count() / lines.size();
    }

    private static Map<Path, Long> lines() throws IOException {
        try (Stream<Path> files = Files.walk(MODULES)) {
            return files.filter(file -> file.toString().contains("/src/main/java/"))
                    .filter(file -> file.toString().endsWith(".java"))
                    .filter(file -> !file.endsWith("package-info.java"))
                    .collect(Collectors.toMap(file -> file, ClassSizeTest::count, (a, b) -> a, TreeMap::new));
        }
    }

    private static long count(Path file) {
        try (Stream<String> lines = Files.lines(file)) {
            return lines.count();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
