package org.glintery.demo;

import java.io.InputStream;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.glintery.api.JsonCodec;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.workshop.Workshop;
import org.glintery.api.workshop.Workshops;
import org.openide.util.Lookup;

/**
 * A call of the verb as it would be parsed.
 *
 * @param values by parameter
 * @param said what was told on standard error
 */
record DemoCall(Path workshopFolder, Map<String, String> values, List<String> said) implements VerbCall {

    DemoCall(Path workshopFolder, Map<String, String> values) {
        this(workshopFolder, values, new ArrayList<>());
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
        return value(name).stream().toList();
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
        throw new UnsupportedOperationException("the verb makes its own workshop");
    }

    @Override
    public Workshops workshops() {
        return Lookup.getDefault().lookup(Workshops.class);
    }

    @Override
    public JsonCodec codec() {
        throw new UnsupportedOperationException("the verb writes no JSON itself");
    }

    @Override
    public Clock clock() {
        return Clock.systemUTC();
    }

    @Override
    public InputStream in() {
        return InputStream.nullInputStream();
    }

    @Override
    public void line(Object answer, String text) {
        throw new UnsupportedOperationException("the verb answers once, at its end");
    }

    @Override
    public void say(String text) {
        said.add(text);
    }
}
