package org.glintery.storage.ui;

import java.awt.Point;
import java.util.List;
import javax.swing.Action;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JComponent;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import org.glintery.api.ledger.Spot;
import org.glintery.api.storage.Storage;
import org.glintery.workbench.spi.Desk;
import org.openide.util.NbBundle.Messages;

/** What can be done with a pocket or a bag, by the right mouse button or the menu key. Event thread. */
final class SpotMenu {
    private final Desk desk;
    private final Storage storage;

    SpotMenu(Desk desk, Storage storage) {
        this.desk = desk;
        this.storage = storage;
    }

    @Messages("SpotMenu.mixed=Several kinds may lie here (mixed)")
    void show(JComponent over, Point at, CabinetSheet.PocketDrawing pocket) {
        JPopupMenu menu = menu(over, pocket.spot(), pocket.contents());
        JCheckBoxMenuItem mixed = new JCheckBoxMenuItem(Bundle.SpotMenu_mixed(), pocket.mixed());
        mixed.addActionListener(e -> desk.change(
                view -> HolderEdits.mixed(view, storage, (Spot.InPocket) pocket.spot(), mixed.isSelected())));
        menu.add(mixed);
        menu.show(over, at.x, at.y);
    }

    void show(JComponent over, Point at, CabinetSheet.BagLine bag) {
        menu(over, bag.spot(), bag.contents()).show(over, at.x, at.y);
    }

    @Messages({
        "SpotMenu.count=Count what is here",
        "SpotMenu.pickUp=Pick up, to put down elsewhere",
        "SpotMenu.putDown=Put down here"
    })
    private JPopupMenu menu(JComponent over, Spot spot, List<CabinetSheet.Content> contents) {
        JPopupMenu menu = new JPopupMenu();
        JMenuItem count = menu.add(Bundle.SpotMenu_count());
        count.addActionListener(e -> new CountSheet(desk, spot, contents).ask());
        count.setEnabled(!contents.isEmpty());
        JMenuItem pickUp = item(Bundle.SpotMenu_pickUp(), over, "cut");
        pickUp.setEnabled(!contents.isEmpty());
        menu.add(pickUp);
        menu.add(item(Bundle.SpotMenu_putDown(), over, "paste"));
        return menu;
    }

    private static JMenuItem item(String words, JComponent over, String action) {
        JMenuItem item = new JMenuItem(words);
        Action does = over.getActionMap().get(action);
        item.addActionListener(
                e -> does.actionPerformed(new java.awt.event.ActionEvent(over, e.getID(), action, e.getModifiers())));
        return item;
    }
}
