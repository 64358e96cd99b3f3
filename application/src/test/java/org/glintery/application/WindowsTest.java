package org.glintery.application;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.ResourceLock;
import org.w3c.dom.Element;

/** Starts the packaged application on the demo with the self-test beside it, and reads what it found. */
@Order(2)
@ResourceLock(Display.LOCK)
class WindowsTest {
    private static final Path TARGET = Path.of("target").toAbsolutePath();
    /** What there is: a class or a picture that falls out is noticed. */
    private static final int TESTS_ON_THE_DEMO = 19;

    private static final int TESTS_OF_FIRST_USE = 4;
    private static final int SHOTS_OF_THE_DEMO = 88;
    private static final int SHOTS_OF_FIRST_USE = 13;
    private static final int DEADLINE_MINUTES = 8;

    @TempDir
    Path scratch;

    @Test
    void showsTheDemoInEveryWindow_inLightAndDark() throws Exception {
        run("screenshots", TESTS_ON_THE_DEMO, SHOTS_OF_THE_DEMO, demo());
    }

    @Test
    void showsTheDemoInEveryWindow_atTwiceTheSize() throws Exception {
        List<String> large = new ArrayList<>(demo());
        large.add("-J-Dsun.java2d.uiScale=2");
        run("screenshots/200-percent", TESTS_ON_THE_DEMO, SHOTS_OF_THE_DEMO, large);
    }

    @Test
    void showsAFirstStart_anEmptyWorkshopAndOneOf400Pieces() throws Exception {
        run(
                "screenshots/first-use",
                TESTS_OF_FIRST_USE,
                SHOTS_OF_FIRST_USE,
                List.of(
                        "-J-Dglintery.selftest.what=first-use",
                        "-J-Dglintery.selftest.new=" + scratch.resolve("First"),
                        "-J-Duser.home=" + scratch));
    }

    private List<String> demo() {
        return List.of("-J-Dglintery.workshop=" + scratch.resolve("Ferry-town"), "-J-Dglintery.demo=true");
    }

    private void run(String shots, int leastTests, int leastShots, List<String> more) throws Exception {
        clear(TARGET.resolve(shots));
        List<String> command = new ArrayList<>(List.of(
                TARGET.resolve("glintery/bin/glintery").toString(),
                "--userdir",
                scratch.resolve("user").toString(),
                "--cachedir",
                scratch.resolve("cache").toString(),
                "--nosplash",
                "-J-XX:TieredStopAtLevel=1",
                "-J-XX:+UseSerialGC",
                "-J-Dglintery.selftest=" + TARGET,
                "-J-Dglintery.selftest.name=" + shots));
        command.addAll(more);
        Path results = TARGET.resolve("results.xml");
        Files.deleteIfExists(results);
        Path output = scratch.resolve("output.txt");
        ProcessBuilder builder =
                new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(output.toFile());
        builder.environment().put("DISPLAY", Display.name());
        builder.environment().put("extra_clusters", Display.selfTest().toString());
        Process process = builder.start();
        boolean ended = process.waitFor(DEADLINE_MINUTES, TimeUnit.MINUTES);
        if (!ended) {
            process.descendants().forEach(ProcessHandle::destroyForcibly);
            process.destroyForcibly();
        }
        assertThat(ended)
                .as("ended in time; its output: %s", Files.readString(output))
                .isTrue();
        assertThat(results)
                .as("results; its output: %s", Files.readString(output))
                .exists();
        Element suite = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(results.toFile())
                .getDocumentElement();
        assertThat(Integer.parseInt(suite.getAttribute("tests")))
                .as("tests that ran")
                .isGreaterThanOrEqualTo(leastTests);
        assertThat(suite.getAttribute("failures")).as(Files.readString(results)).isEqualTo("0");
        assertThat(process.exitValue()).isZero();
        try (Stream<Path> files = Files.list(TARGET.resolve(shots))) {
            assertThat(files.filter(f -> f.toString().endsWith(".png")).count())
                    .as("screenshots")
                    .isGreaterThanOrEqualTo(leastShots);
        }
    }

    /** Pictures of an earlier run would count, too. */
    private static void clear(Path shots) throws IOException {
        if (!Files.isDirectory(shots)) {
            return;
        }
        try (Stream<Path> old = Files.list(shots)) {
            for (Path file : old.filter(f -> f.toString().endsWith(".png")).toList()) {
                Files.delete(file);
            }
        }
    }
}
