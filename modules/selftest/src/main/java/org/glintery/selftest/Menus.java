package org.glintery.selftest;

import java.awt.event.ActionEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.KeyStroke;
import javax.swing.MenuElement;
import javax.swing.MenuSelectionManager;

/** What the menus say that fold out of a window. Event thread. */
final class Menus {
    private Menus() {}

    /** Opens the menu of a list's first row from the keyboard and reads it. */
    static List<String> ofRow(JComponent list) {
        return opened(() -> list.getActionForKeyStroke(KeyStroke.getKeyStroke("shift F10"))
                .actionPerformed(new ActionEvent(list, ActionEvent.ACTION_PERFORMED, "")));
    }

    /** Opens a menu, reads it with what folds out of it, and closes it. */
    static List<String> opened(Runnable opening) {
        opening.run();
        MenuElement[] path = MenuSelectionManager.defaultManager().getSelectedPath();
        if (path.length == 0 || !(path[0] instanceof JPopupMenu menu)) {
            throw new AssertionError("no menu came");
        }
        List<String> texts = new ArrayList<>();
        read(menu, texts);
        MenuSelectionManager.defaultManager().clearSelectedPath();
        return texts;
    }

    private static void read(JPopupMenu menu, List<String> texts) {
        for (JMenuItem item : Screen.all(menu, JMenuItem.class)) {
            texts.add(item.getText());
            if (item instanceof JMenu folded) {
                read(folded.getPopupMenu(), texts);
            }
        }
    }
}
