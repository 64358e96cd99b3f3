package org.glintery.workbench.shelves;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import javax.swing.JList;

/** Shows where the keyboard is: a list that gets the focus without anything chosen chooses its first row. */
final class FocusSelects {
    private FocusSelects() {}

    static void first(JList<?> list) {
        list.addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent e) {
                if (list.isSelectionEmpty() && list.getModel().getSize() > 0) {
                    list.setSelectedIndex(0);
                }
            }
        });
    }
}
