package org.glintery.workbench.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.EventQueue;
import java.awt.event.ActionEvent;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.util.ArrayList;
import java.util.List;
import javax.accessibility.AccessibleRole;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.Test;

class DrawnComponentTest {

    private static final class Drawn extends DrawnComponent {
        private static final long serialVersionUID = 1L;
        private final transient List<String> done = new ArrayList<>();

        Drawn() {
            super(AccessibleRole.SLIDER);
            onKey("shift F10", () -> done.add("menu"));
            repaintOnFocus();
            done.clear();
        }

        @Override
        public void repaint() {
            if (done != null) { // while it is being made
                done.add("paint");
            }
        }

        void press(String stroke) {
            Object bound = getInputMap().get(KeyStroke.getKeyStroke(stroke));
            getActionMap().get(bound).actionPerformed(new ActionEvent(this, 0, ""));
        }
    }

    @Test
    void doesWhatAKeyIsFor_andPaintsAnewWhenTheFocusComesAndGoes() throws Exception {
        EventQueue.invokeAndWait(() -> {
            Drawn drawn = new Drawn();
            drawn.press("shift F10");
            assertThat(drawn.done).containsExactly("menu");
            for (FocusListener listener : drawn.getFocusListeners()) {
                listener.focusGained(new FocusEvent(drawn, FocusEvent.FOCUS_GAINED));
                listener.focusLost(new FocusEvent(drawn, FocusEvent.FOCUS_LOST));
            }
            assertThat(drawn.done).containsExactly("menu", "paint", "paint");
            assertThat(drawn.getAccessibleContext().getAccessibleRole()).isEqualTo(AccessibleRole.SLIDER);
        });
    }
}
