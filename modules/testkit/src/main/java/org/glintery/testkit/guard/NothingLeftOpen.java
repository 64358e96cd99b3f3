package org.glintery.testkit.guard;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Window;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Collectors;
import org.glintery.testkit.MemoryWorkshop;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Fails a test that leaves behind a workshop in memory, a window, or a thread that keeps Java from ending. */
public final class NothingLeftOpen implements BeforeEachCallback, AfterEachCallback {
    private static final ExtensionContext.Namespace HERE = ExtensionContext.Namespace.create(NothingLeftOpen.class);
    private static final long PATIENCE_MS = 2_000;

    private record Open(Set<MemoryWorkshop> workshops, Set<Window> windows, Set<Thread> threads) {

        static Open now() {
            return new Open(
                    new HashSet<>(MemoryWorkshop.open()),
                    Arrays.stream(Window.getWindows())
                            .filter(Window::isDisplayable)
                            .collect(Collectors.toSet()),
                    Thread.getAllStackTraces().keySet().stream()
                            .filter(thread -> !thread.isDaemon() && !isAwt(thread))
                            .collect(Collectors.toSet()));
        }

        private static boolean isAwt(Thread thread) {
            return thread.getName().startsWith("AWT-") || thread.getName().equals("DestroyJavaVM");
        }
    }

    @Override
    public void beforeEach(ExtensionContext context) {
        context.getStore(HERE).put(Open.class, Open.now());
    }

    @Override
    public void afterEach(ExtensionContext context) throws InterruptedException {
        Open before = context.getStore(HERE).remove(Open.class, Open.class);
        Open after = Open.now();
        after.workshops().removeAll(before.workshops());
        after.windows().removeAll(before.windows());
        after.threads().removeAll(before.threads());
        assertThat(after.workshops()).as("workshops left open").isEmpty();
        assertThat(after.windows()).as("windows left open").isEmpty();
        for (Thread thread : after.threads()) {
            thread.join(PATIENCE_MS);
            assertThat(thread.isAlive()).as("left running: " + thread.getName()).isFalse();
        }
    }
}
