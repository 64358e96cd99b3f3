package org.glintery.testkit.guard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Fails a test in which Glintery, or the package of the test, logged a warning. */
public final class QuietLog implements BeforeEachCallback, AfterEachCallback {
    private static final ExtensionContext.Namespace HERE = ExtensionContext.Namespace.create(QuietLog.class);
    private static final String OURS = "org.glintery.";

    /** By the start of their packages. */
    private record Listening(Map<String, OwnWarnings> warnings) {}

    @Override
    public void beforeEach(ExtensionContext context) {
        Map<String, OwnWarnings> warnings = new LinkedHashMap<>();
        String tested = context.getRequiredTestClass().getPackageName() + ".";
        warnings.computeIfAbsent(OURS, OwnWarnings::of);
        warnings.computeIfAbsent(tested.startsWith(OURS) ? OURS : tested, OwnWarnings::of);
        context.getStore(HERE).put(Listening.class, new Listening(warnings));
    }

    @Override
    public void afterEach(ExtensionContext context) {
        Listening listening = context.getStore(HERE).remove(Listening.class, Listening.class);
        listening.warnings().values().forEach(OwnWarnings::close);
        listening
                .warnings()
                .values()
                .forEach(warnings -> assertThat(warnings.seen())
                        .as("warnings that were logged")
                        .isEmpty());
    }
}
