package org.glintery.selftest;

import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import javax.imageio.ImageIO;
import javax.swing.JRootPane;
import javax.swing.RootPaneContainer;
import javax.swing.SwingUtilities;
import org.openide.windows.WindowManager;

/** The window from the outside: waiting, looking for components, screenshots. */
final class Screen {
    private static final long DEADLINE_NS = TimeUnit.SECONDS.toNanos(60);
    private static final int POLL_MS = 20;
    /** So many one after another: between two steps of what goes on there may be a moment in which nobody is at it. */
    private static final int QUIET_POLLS = 8;

    private Screen() {}

    /** Does something on the event thread and gives what came of it. */
    static <T> T onEventThread(Callable<T> work) {
        AtomicReference<T> value = new AtomicReference<>();
        AtomicReference<Exception> trouble = new AtomicReference<>();
        try {
            EventQueue.invokeAndWait(() -> {
                try {
                    value.set(work.call());
                } catch (Exception e) {
                    trouble.set(e);
                }
            });
        } catch (InterruptedException | InvocationTargetException e) {
            throw new AssertionError(e);
        }
        if (trouble.get() != null) {
            throw new AssertionError(trouble.get());
        }
        return value.get();
    }

    /** Waits until something holds, asked on the event thread; fails after a minute. */
    static void until(String what, BooleanSupplier holds) {
        until(() -> what, holds);
    }

    private static void until(Supplier<String> what, BooleanSupplier holds) {
        long start = System.nanoTime();
        while (!onEventThread(holds::getAsBoolean)) {
            if (System.nanoTime() - start > DEADLINE_NS) {
                throw new AssertionError("waited a minute for: " + what.get());
            }
            pause();
        }
    }

    /** Lets parts that are prepared in the background, and pictures, arrive; fails after a minute. */
    static void settle() {
        AtomicReference<List<String>> underWay = new AtomicReference<>(List.of());
        AtomicInteger quiet = new AtomicInteger();
        until(() -> "the window to come to rest from " + underWay.get(), () -> {
            underWay.set(Work.underWay());
            quiet.set(underWay.get().isEmpty() ? quiet.get() + 1 : 0);
            return quiet.get() >= QUIET_POLLS;
        });
    }

    private static void pause() {
        try {
            new CountDownLatch(1).await(POLL_MS, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    /** Paints the main window into a PNG file and gives how many colours it shows. */
    static int shoot(Path folder, String name) throws IOException {
        return shoot((RootPaneContainer) WindowManager.getDefault().getMainWindow(), folder, name);
    }

    /** Paints a window or a dialog into a PNG file and gives how many colours it shows. */
    static int shoot(RootPaneContainer shown, Path folder, String name) throws IOException {
        settle();
        BufferedImage image = onEventThread(() -> {
            // the pane, not the frame: a printed frame gets a border that no window manager shows
            JRootPane window = SwingUtilities.getRootPane(shown.getContentPane());
            double scale =
                    window.getGraphicsConfiguration().getDefaultTransform().getScaleX();
            BufferedImage shot = new BufferedImage(
                    (int) (window.getWidth() * scale), (int) (window.getHeight() * scale), BufferedImage.TYPE_INT_RGB);
            Graphics2D g = shot.createGraphics();
            g.scale(scale, scale);
            window.printAll(g);
            g.dispose();
            return shot;
        });
        Files.createDirectories(folder);
        ImageIO.write(image, "png", folder.resolve(name + ".png").toFile());
        int[] pixels = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        return (int) java.util.Arrays.stream(pixels).distinct().count();
    }

    static <C> List<C> all(Container in, Class<C> type) {
        List<C> found = new ArrayList<>();
        for (Component child : in.getComponents()) {
            if (type.isInstance(child)) {
                found.add(type.cast(child));
            }
            if (child instanceof Container container) {
                found.addAll(all(container, type));
            }
        }
        return found;
    }
}
