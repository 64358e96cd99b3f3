package org.glintery.testkit.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import javax.swing.JComponent;
import org.glintery.api.workshop.View;
import org.glintery.testkit.EventThread;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.ScreenPart;

/** Shows a part as the application does, each step on its thread, and holds it to what parts promise. */
final class PartShowing {
    private static final int WIDTH_PX = 900;
    private static final int HEIGHT_PX = 700;
    private static final long PREPARE_MS = 5_000;
    private static final long PAINT_MS = 100;
    private static final int TRIES = 5;

    private PartShowing() {}

    /** @param create called on the event thread */
    static void check(Desk desk, Callable<ScreenPart<?>> create) {
        check(desk.view(), EventThread.call(create));
    }

    private static <M> void check(View view, ScreenPart<M> part) {
        assertThat(part).as("the part").isNotNull();
        JComponent component = EventThread.call(part::component);
        assertThat(component).as("its component").isNotNull();
        String before = view.contentDigest();
        M model = prepared(view, part);
        for (int times = 0; times < 2; times++) {
            EventThread.run(() -> part.show(model));
            assertThat(EventThread.call(part::component))
                    .as("the component, which is always the same")
                    .isSameAs(component);
        }
        assertThat(paintMs(component))
                .as("ms to paint %s", component.getClass().getName())
                .isLessThanOrEqualTo(PAINT_MS);
        assertThat(view.contentDigest()).as("the view that was shown").isEqualTo(before);
    }

    private static <M> M prepared(View view, ScreenPart<M> part) {
        long start = System.nanoTime();
        M model = part.prepare(view);
        assertThat(TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start))
                .as("ms to prepare")
                .isLessThanOrEqualTo(PREPARE_MS);
        return model;
    }

    /** The best of some tries: the first ones load classes. */
    private static long paintMs(JComponent component) {
        long best = Long.MAX_VALUE;
        for (int times = 0; times < TRIES; times++) {
            best = Math.min(best, EventThread.call(() -> paintedMs(component)));
        }
        return best;
    }

    private static long paintedMs(JComponent component) {
        component.setSize(WIDTH_PX, HEIGHT_PX);
        layOut(component);
        BufferedImage image = new BufferedImage(WIDTH_PX, HEIGHT_PX, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        long start = System.nanoTime();
        component.paint(g);
        long took = System.nanoTime() - start;
        g.dispose();
        return TimeUnit.NANOSECONDS.toMillis(took);
    }

    /** Without a window nobody lays out what is inside. */
    private static void layOut(Container container) {
        container.doLayout();
        for (Component child : container.getComponents()) {
            if (child instanceof Container inner) {
                layOut(inner);
            }
        }
    }
}
