package org.glintery.application;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;

/** The screen that tests open windows on. Two applications at once would take the keyboard from one another. */
final class Display {
    /** What a test locks that opens windows. */
    static final String LOCK = "display";

    private static final Path SELF_TEST = Path.of("../modules/selftest/target/nbm/clusters/selftest")
            .toAbsolutePath()
            .normalize();

    private Display() {}

    static boolean isThere() {
        String name = System.getenv("DISPLAY");
        return name != null && !name.isBlank();
    }

    /** Its name, without which the test fails. */
    static String name() {
        String name = System.getenv("DISPLAY");
        assertThat(name).as("a display: run this under xvfb-run").isNotBlank();
        return name;
    }

    /** The cluster of the self-test that runs inside the application. */
    static Path selfTest() {
        assertThat(SELF_TEST.resolve("modules")).as("the self-test's cluster").isDirectory();
        return SELF_TEST;
    }
}
