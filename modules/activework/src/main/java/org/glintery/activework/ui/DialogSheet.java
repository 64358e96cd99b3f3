package org.glintery.activework.ui;

import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.glintery.workbench.parts.FormSheet;
import org.glintery.workbench.parts.Space;

/** A form as wide as a few words need, as dialogs of the bench show it. Event thread. */
final class DialogSheet extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int WIDTH_PX = 460;
    private static final int ROWS = 4;
    private static final int COLUMNS = 30;

    DialogSheet(FormSheet form) {
        super(new MigLayout("insets 0", "[" + Space.px(WIDTH_PX) + "!, fill]"));
        setOpaque(false);
        add(form);
    }

    /** Where a few lines are written. */
    static JTextArea area() {
        JTextArea area = new JTextArea(ROWS, COLUMNS);
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        return area;
    }
}
