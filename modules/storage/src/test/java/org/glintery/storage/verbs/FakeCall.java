package org.glintery.storage.verbs;

import java.io.InputStream;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.glintery.api.JsonCodec;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.workshop.Workshop;
import org.glintery.api.workshop.Workshops;
import org.openide.util.Lookup;

/** A call of a verb with arguments as they would be parsed, at an open workshop. */
final class FakeCall implements VerbCall {

    final List<String> lines = new ArrayList<>();
    final List<String> said = new ArrayList<>();
    private final Workshop workshop;
    private final Map<String, String> values = new HashMap<>();

    FakeCall(Workshop workshop) {
        this.workshop = workshop;
    }

    FakeCall with(String name, String value) {
        values.put(name, value);
        return this;
    }



    @Override
    public Optional<String> value(String name) {
        return Optional.ofNullable(values.get(name));
    }

    @Override
    public String need(String name) {
        return value(name).orElseThrow();
    }

    @Override
    public List<String> values(String name) {
        return value(name).map(List::of).orElse(List.of());
    }

    @Override
    public boolean flag(String name) {
        return false;
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
        return workshop;
    }

    @Override
    public Workshops workshops() {
        return Lookup.getDefault().lookup(Workshops.class);
    }

    @Override
    public Path workshopFolder() {
        return workshop.folder();
    }

    @Override
    public JsonCodec codec() {
        return Lookup.getDefault().lookup(JsonCodec.class);
    }

    @Override
    public Clock clock() {
        return Clock.fixed(Instant.parse("2025-05-02T10:00:00Z"), ZoneOffset.UTC);
    }

    @Override
    public InputStream in() {
        return InputStream.nullInputStream();
    }

    @Override
    public void line(Object answer, String text) {
        lines.add(text);
    }

    @Override
    public void say(String text) {
        said.add(text);
    }
}
