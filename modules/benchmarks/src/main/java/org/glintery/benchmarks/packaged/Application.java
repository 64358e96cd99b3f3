package org.glintery.benchmarks.packaged;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Starts the packaged application.
 *
 * @param home the folder that holds {@code bin} and {@code etc}
 * @param scratch takes the place of the user's home and of the temporary folder
 */
public record Application(Path home, Path scratch) {

    public Application {
        home = home.toAbsolutePath();
        scratch = scratch.toAbsolutePath();
    }

    /** Starts a verb in a workshop; what it says aside goes where this process says such things. */
    public Process verb(Path workshop, String... words) throws IOException {
        List<String> command = new ArrayList<>();
        command.add(home.resolve("bin/glintery-do").toString());
        command.addAll(List.of(words));
        ProcessBuilder builder = builder(command);
        builder.environment().put("GLINTERY_WORKSHOP", workshop.toAbsolutePath().toString());
        builder.environment().remove("DISPLAY");
        return builder.redirectError(ProcessBuilder.Redirect.INHERIT).start();
    }

    private ProcessBuilder builder(List<String> command) throws IOException {
        Files.createDirectories(scratch);
        ProcessBuilder builder = new ProcessBuilder(command).directory(scratch.toFile());
        builder.environment().remove("GLINTERY_USERDIR");
        builder.environment().put("HOME", scratch.toString());
        builder.environment().put("TMPDIR", scratch.toString());
        return builder;
    }
}
