package org.glintery.framing.ui;

import java.awt.BorderLayout;
import javax.swing.JPanel;
import org.glintery.workbench.parts.Caution;

/** A caution whose words change; nothing where there is none. Event thread. */
final class CautionNote extends JPanel {

    private static final long serialVersionUID = 1L;

    private String shown = "";

    CautionNote() {
        super(new BorderLayout());
        setOpaque(false);
        setVisible(false);
    }

    void show(String text) {
        if (!text.equals(shown)) {
            shown = text;
            removeAll();
            if (!text.isBlank()) {
                add(new Caution(text));
            }
            setVisible(!text.isBlank());
            revalidate();
        }
    }
}
