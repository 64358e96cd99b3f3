package org.glintery.application;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;

/** The packaged {@code glintery-do}, started as a shell would start it: in a folder, with a home and variables. */
record GlinteryDo(Path folder, Map<String, String> variables, List<String> prefix) {

    static final Path HOME = Path.of("target/glintery").toAbsolutePath();
    static final Path LAUNCHER = HOME.resolve("bin/glintery-do");
    /** For what goes on beside a process: it blocks, so it may not take the few threads that Java shares among all. */
    static final Executor THREADS = Executors.newCachedThreadPool(work -> {
        Thread thread = new Thread(work, "Beside a process");
        thread.setDaemon(true);
        return thread;
    });

    private static final int DEADLINE_S = 120;

    /** In a folder that is also the user's home, so that nothing of the real one is seen. */
    static GlinteryDo in(Path folder) {
        return new GlinteryDo(folder, Map.of("HOME", folder.toString(), "TMPDIR", folder.toString()), List.of());
    }

    GlinteryDo with(String variable, String value) {
        Map<String, String> more = new HashMap<>(variables);
        more.put(variable, value);
        return new GlinteryDo(folder, more, prefix);
    }

    /** Started by way of another command, such as one that changes the user. */
    GlinteryDo by(String... command) {
        return new GlinteryDo(folder, variables, List.of(command));
    }

    Process start(String... words) {
        assertThat(LAUNCHER).as("the packaged application; package it first").isExecutable();
        List<String> command = new ArrayList<>(prefix);
        command.add(LAUNCHER.toString());
        command.addAll(List.of(words));
        return start(command);
    }

    Process start(List<String> command) {
        ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
        builder.environment().remove("GLINTERY_WORKSHOP");
        builder.environment().remove("GLINTERY_USERDIR");
        builder.environment().remove("extra_clusters");
        builder.environment().remove("DISPLAY");
        builder.environment().putAll(variables);
        try {
            return builder.start();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Ran run(String... words) {
        return withInput("", words);
    }

    Ran withInput(String input, String... words) {
        return finish(start(words), input);
    }

    static Ran finish(Process process, String input) {
        CompletableFuture<String> out = CompletableFuture.supplyAsync(() -> all(process.getInputStream()), THREADS);
        CompletableFuture<String> err = CompletableFuture.supplyAsync(() -> all(process.getErrorStream()), THREADS);
        try (OutputStream in = process.getOutputStream()) {
            in.write(input.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            // a verb that reads nothing may have ended already; what it says is judged by the caller
        }
        try {
            boolean ended = process.waitFor(DEADLINE_S, TimeUnit.SECONDS);
            if (!ended) {
                process.descendants().forEach(ProcessHandle::destroyForcibly);
                process.destroyForcibly();
            }
            assertThat(ended).as("ended in time").isTrue();
        } catch (InterruptedException e) {
            throw new IllegalStateException("interrupted while a verb ran", e);
        }
        return new Ran(process.exitValue(), out.join(), err.join());
    }

    private static String all(InputStream in) {
        try {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A file with a text in the folder. */
    Path file(String name, String text) {
        try {
            return Files.writeString(folder.resolve(name), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
