package org.glintery.workbench.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Dimension;
import java.util.concurrent.atomic.AtomicInteger;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.RepaintManager;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** How often rows ask to be laid out anew by whoever holds them. */
class FlowRowsTest {
    private final AtomicInteger asked = new AtomicInteger();
    private final FlowRows rows = FlowRows.of(label(), label());
    private final RepaintManager before = RepaintManager.currentManager(null);

    private static JComponent label() {
        JLabel label = new JLabel("Rope-walk");
        label.setPreferredSize(new Dimension(100, 30));
        return label;
    }

    @BeforeEach
    void count() throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            new JPanel(null).add(rows);
            RepaintManager.setCurrentManager(new RepaintManager() {
                @Override
                public void addInvalidComponent(JComponent component) {
                    if (component == rows) {
                        asked.incrementAndGet();
                    }
                }
            });
        });
    }

    @AfterEach
    void countNoMore() {
        RepaintManager.setCurrentManager(before);
    }

    @Test
    void comeToRest_whereTheyAreGivenMoreRoomThanTheyWant() throws Exception {
        for (int times = 0; times < 20; times++) {
            layOut(300, 500);
        }
        assertThat(asked).hasValueLessThanOrEqualTo(1);
    }

    @Test
    void askAgain_whenAnotherWidthNeedsAnotherHeight() throws Exception {
        layOut(300, 30);
        assertThat(asked).hasValue(0);
        layOut(150, 30);
        assertThat(rows.getPreferredSize().height).isGreaterThan(30);
        assertThat(asked).hasValue(1);
        layOut(120, 30);
        assertThat(asked).hasValue(2);
    }

    /** As whoever holds them does, until what that gave to the event thread is done. */
    private void layOut(int width, int height) throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            rows.setBounds(0, 0, width, height);
            rows.doLayout();
        });
        SwingUtilities.invokeAndWait(() -> {});
    }
}
