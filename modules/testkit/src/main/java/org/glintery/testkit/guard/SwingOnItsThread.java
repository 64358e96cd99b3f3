package org.glintery.testkit.guard;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.EventQueue;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import javax.swing.JComponent;
import javax.swing.RepaintManager;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Fails a test in which a component was changed on another thread than the event thread. */
public final class SwingOnItsThread implements BeforeEachCallback, AfterEachCallback {
    private static final ExtensionContext.Namespace HERE = ExtensionContext.Namespace.create(SwingOnItsThread.class);

    @Override
    public void beforeEach(ExtensionContext context) {
        Watching watching = new Watching(RepaintManager.currentManager(null));
        context.getStore(HERE).put(Watching.class, watching);
        RepaintManager.setCurrentManager(watching);
    }

    @Override
    public void afterEach(ExtensionContext context) {
        Watching watching = context.getStore(HERE).remove(Watching.class, Watching.class);
        RepaintManager.setCurrentManager(watching.before);
        assertThat(watching.seen).as("components changed off the event thread").isEmpty();
    }

    private static final class Watching extends RepaintManager {
        private final RepaintManager before;
        private final List<String> seen = new CopyOnWriteArrayList<>();

        Watching(RepaintManager before) {
            this.before = before;
        }

        @Override
        public void addInvalidComponent(JComponent component) {
            watch(component);
            super.addInvalidComponent(component);
        }

        @Override
        public void addDirtyRegion(JComponent component, int x, int y, int width, int height) {
            watch(component);
            super.addDirtyRegion(component, x, y, width, height);
        }

        private void watch(JComponent component) {
            if (!EventQueue.isDispatchThread()) {
                seen.add(component.getClass().getName() + " on "
                        + Thread.currentThread().getName());
            }
        }
    }
}
