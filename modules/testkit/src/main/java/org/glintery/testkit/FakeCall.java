package org.glintery.testkit;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.glintery.api.JsonCodec;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.workshop.Workshop;
import org.glintery.api.workshop.Workshops;

/**
 * A call of a verb with arguments as they would be parsed, at an open workshop; the clock stands at 2 May 2025, 10:00 UTC.
 * Not safe for use by several threads.
 */
public final class FakeCall implements VerbCall {

    /** What was printed, and what was said on standard error. */
    public final List<String> lines = new ArrayList<>();

    public final List<String> said = new ArrayList<>();

    /** The answers of {@link #lines}, as records. */
    public final List<Object> answers = new ArrayList<>();

    private final Optional<Workshop> workshop;
    private final Path folder;
    private final Map<String, List<String>> values = new HashMap<>();
    private final Set<String> flags = new HashSet<>();
    private byte[] in = {};

    public FakeCall(Workshop workshop) {
        this.workshop = Optional.of(workshop);
        this.folder = workshop.folder();
    }

    /** A call of a verb that opens no workshop by itself. @param folder that {@code --workshop} names */
    public FakeCall(Path folder) {
        this.workshop = Optional.empty();
        this.folder = folder;
    }

    public FakeCall with(String name, String value) {
        values.computeIfAbsent(name, n -> new ArrayList<>()).add(value);
        return this;
    }

    public FakeCall flagged(String name) {
        flags.add(name);
        return this;
    }

    public FakeCall reading(byte[] bytes) {
        in = bytes;
        return this;
    }

    @Override
    public Optional<String> value(String name) {
        return values(name).stream().findFirst();
    }

    @Override
    public String need(String name) {
        return value(name).orElseThrow();
    }

    @Override
    public List<String> values(String name) {
        return values.getOrDefault(name, List.of());
    }

    @Override
    public boolean flag(String name) {
        return flags.contains(name);
    }

    @Override
    public boolean json() {
        return false;
    }

    @Override
    public Path path(String text) {
        return Path.of(text);
    }

    @Override
    public Workshop workshop() {
        return workshop.orElseThrow();
    }

    @Override
    public Workshops workshops() {
        return Installed.one(Workshops.class).orElseThrow();
    }

    @Override
    public Path workshopFolder() {
        return folder;
    }

    @Override
    public JsonCodec codec() {
        return Installed.one(JsonCodec.class).orElseGet(PlainCodec::new);
    }

    @Override
    public Clock clock() {
        return Clock.fixed(Instant.parse("2025-05-02T10:00:00Z"), ZoneOffset.UTC);
    }

    @Override
    public InputStream in() {
        return new ByteArrayInputStream(in);
    }

    @Override
    public void line(Object answer, String text) {
        lines.add(text);
        answers.add(answer);
    }

    @Override
    public void say(String text) {
        said.add(text);
    }
}
