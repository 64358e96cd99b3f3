package org.glintery.workbench.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics;
import java.awt.image.BufferedImage;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.lang.reflect.Proxy;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.glintery.api.workshop.View;
import org.glintery.workbench.TestView;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.ScreenPart;
import org.junit.jupiter.api.Test;

/** Parts of add-ons that go wrong, each in its own way, are set aside and can be taken back. */
class PartPaneTest {
    private static final int SIZE = 400;
    private boolean faulty = true;

    /** Nothing but the view is asked of it. */
    private static Desk desk() {
        return (Desk) Proxy.newProxyInstance(
                Desk.class.getClassLoader(), new Class<?>[] {Desk.class}, (proxy, method, arguments) -> {
                    if (method.getName().equals("view")) {
                        return new TestView(1);
                    }
                    throw new UnsupportedOperationException(method.getName());
                });
    }

    private class Part implements ScreenPart<String> {
        private final JComponent component;

        Part(JComponent component) {
            this.component = component;
        }

        @Override
        public String prepare(View view) {
            return "";
        }

        @Override
        public JComponent component() {
            return component;
        }

        @Override
        public void show(String model) {}
    }

    /** What is painted, by one that throws or dawdles as long as it is faulty. */
    private JComponent painting(Runnable fault) {
        return new JLabel("care notes") {
            private static final long serialVersionUID = 1L;

            @Override
            protected void paintComponent(Graphics g) {
                if (faulty) {
                    fault.run();
                }
                super.paintComponent(g);
            }
        };
    }

    private static List<String> words(Container pane) {
        List<String> words = new ArrayList<>();
        for (Component child : pane.getComponents()) {
            if (child instanceof JLabel label) {
                words.add(label.getText());
            } else if (child instanceof JTextComponent text) {
                words.add(text.getText());
            }
            if (child instanceof Container container) {
                words.addAll(words(container));
            }
        }
        return words;
    }

    private static void press(Container pane, String text) {
        for (Component child : pane.getComponents()) {
            if (child instanceof AbstractButton button && text.equals(button.getText())) {
                button.doClick();
                return;
            }
            if (child instanceof Container container) {
                press(container, text);
            }
        }
    }

    private static void paint(PartPane pane) throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            pane.setSize(SIZE, SIZE);
            pane.doLayout();
            BufferedImage image = new BufferedImage(SIZE, SIZE, BufferedImage.TYPE_INT_RGB);
            Graphics g = image.createGraphics();
            pane.paint(g);
            g.dispose();
        });
        SwingUtilities.invokeAndWait(() -> {}); // what painting left for later
    }

    private PartPane pane(JComponent component) throws Exception {
        PartPane[] made = new PartPane[1];
        SwingUtilities.invokeAndWait(() -> made[0] = new PartPane("Care notes", desk(), new Part(component)));
        return made[0];
    }

    @Test
    void setsAside_whatThrowsWhileItIsMade_untilItIsTakenBack() throws Exception {
        PartPane[] pane = new PartPane[1];
        SwingUtilities.invokeAndWait(() -> pane[0] = new PartPane("Care notes", desk(), this, () -> {
            if (faulty) {
                throw new LinkageError("planted");
            }
            return new Part(new JLabel("care notes"));
        }));
        assertThat(String.join(" ", words(pane[0]))).contains("Care notes could not be shown and was set aside.");

        faulty = false;
        SwingUtilities.invokeAndWait(() -> press(pane[0], "Try again"));
        assertThat(words(pane[0])).containsExactly("care notes");
    }

    @Test
    void setsAside_whatThrowsWhileItIsPainted() throws Exception {
        PartPane pane = pane(painting(() -> {
            throw new IllegalStateException("planted");
        }));
        paint(pane);
        assertThat(String.join(" ", words(pane))).contains("Care notes could not be shown and was set aside.");
    }

    @Test
    void setsAsideOnceMore_whatCanNotBePutBack_untilItCan() throws Exception {
        boolean[] gone = new boolean[1];
        JComponent painted = painting(() -> {
            throw new IllegalStateException("planted");
        });
        PartPane[] made = new PartPane[1];
        Part part = new Part(painted) {
            @Override
            public JComponent component() {
                if (gone[0]) {
                    throw new LinkageError("planted");
                }
                return super.component();
            }
        };
        SwingUtilities.invokeAndWait(() -> made[0] = new PartPane("Care notes", desk(), part));
        paint(made[0]);
        gone[0] = true;
        SwingUtilities.invokeAndWait(() -> press(made[0], "Try again"));
        assertThat(String.join(" ", words(made[0]))).contains("Care notes could not be shown and was set aside.");

        gone[0] = false;
        faulty = false;
        SwingUtilities.invokeAndWait(() -> press(made[0], "Try again"));
        assertThat(words(made[0])).containsExactly("care notes");
    }

    @Test
    void setsAside_whatPaintsSlowlyAgainAndAgain() throws Exception {
        PartPane pane = pane(painting(PartPaneTest::dawdle));
        paint(pane);
        assertThat(words(pane)).containsExactly("care notes");
        paint(pane);
        paint(pane);
        assertThat(String.join(" ", words(pane))).contains("takes so long to draw");
    }

    /** By the processor's time, so that it is as slow on a busy computer. */
    private static void dawdle() {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        long end = threads.getCurrentThreadCpuTime() + TimeUnit.MILLISECONDS.toNanos(200);
        long turns = 0;
        while (threads.getCurrentThreadCpuTime() < end) {
            turns++;
        }
        assertThat(turns).isPositive();
    }
}
