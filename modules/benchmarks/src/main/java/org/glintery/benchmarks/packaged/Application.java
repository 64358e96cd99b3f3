package org.glintery.benchmarks.packaged;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

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

    /** Starts a verb in a workshop; what it says aside goes into a file in the scratch folder. */
    public Process verb(Path workshop, String... words) throws IOException {
        List<String> command = new ArrayList<>();
        command.add(home.resolve("bin/glintery-do").toString());
        command.addAll(List.of(words));
        ProcessBuilder builder = builder(command);
        builder.environment().put("GLINTERY_WORKSHOP", workshop.toAbsolutePath().toString());
        builder.environment().remove("DISPLAY");
        return builder.start();
    }

    /** Starts the window on a workshop, with a cluster of more modules and properties of the Java process. */
    public Process window(Path workshop, Path cluster, Map<String, String> properties) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                home.resolve("bin/glintery").toString(),
                "--userdir",
                scratch.resolve("user").toString(),
                "--cachedir",
                scratch.resolve("cache").toString(),
                "--nosplash",
                "-J-Dglintery.workshop=" + workshop.toAbsolutePath()));
        properties.forEach((name, value) -> command.add("-J-D" + name + "=" + value));
        ProcessBuilder builder = builder(command);
        builder.environment().put("extra_clusters", cluster.toAbsolutePath().toString());
        return builder.redirectOutput(ProcessBuilder.Redirect.appendTo(aside())).start();
    }

    /** The same launcher and platform with another cluster instead of ours, and another option instead of a verb. */
    public Application bare(Path folder, Path cluster, String option) throws IOException {
        Path bare = folder.toAbsolutePath();
        for (String part : List.of("bin", "etc")) {
            Files.createDirectories(bare.resolve(part));
        }
        Files.createSymbolicLink(bare.resolve("platform"), home.resolve("platform"));
        Files.createSymbolicLink(bare.resolve("bare"), cluster.toAbsolutePath());
        Files.copy(home.resolve("etc/glintery.conf"), bare.resolve("etc/glintery.conf"));
        Files.writeString(bare.resolve("etc/glintery.clusters"), "bare\nplatform\n");
        Path script = bare.resolve("bin/glintery-do");
        Files.writeString(
                script, Files.readString(home.resolve("bin/glintery-do")).replace("--glintery-verb", "--" + option));
        if (!script.toFile().setExecutable(true)) {
            throw new IOException(script + " can't be made executable");
        }
        return new Application(bare, scratch);
    }

    private File aside() {
        return scratch.resolve("aside.txt").toFile();
    }

    private ProcessBuilder builder(List<String> command) throws IOException {
        Files.createDirectories(scratch);
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(scratch.toFile())
                .redirectError(ProcessBuilder.Redirect.appendTo(aside()));
        builder.environment().remove("GLINTERY_USERDIR");
        builder.environment().put("HOME", scratch.toString());
        builder.environment().put("TMPDIR", scratch.toString());
        return builder;
    }
}
