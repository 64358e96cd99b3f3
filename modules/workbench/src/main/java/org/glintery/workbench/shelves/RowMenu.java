package org.glintery.workbench.shelves;

import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.time.LocalDate;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.glintery.api.activework.ActiveWork;
import org.glintery.api.stash.Standing;
import org.glintery.api.stash.Stash;
import org.glintery.api.time.About;
import org.glintery.workbench.parts.Needs;
import org.glintery.workbench.piece.PieceForm;
import org.glintery.workbench.piece.PieceWords;
import org.glintery.workbench.spi.Desk;
import org.openide.util.NbBundle.Messages;

/** What can be done with a row of the shelves, by the right mouse button or the menu key. Event thread. */
final class RowMenu {
    private final Desk desk;
    private final Runnable open;

    RowMenu(Desk desk, Runnable open) {
        this.desk = desk;
        this.open = open;
    }

    void serve(JList<ShelfRow> rows) {
        rows.registerKeyboardAction(
                e -> atSelection(rows), KeyStroke.getKeyStroke("CONTEXT_MENU"), JComponent.WHEN_FOCUSED);
        rows.registerKeyboardAction(
                e -> atSelection(rows), KeyStroke.getKeyStroke("shift F10"), JComponent.WHEN_FOCUSED);
        rows.addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent e) {
                popUp(e);
            }

            @Override
            public void mouseReleased(MouseEvent e) {
                popUp(e);
            }

            @Override
            public void mouseClicked(MouseEvent e) {
                if (SwingUtilities.isLeftMouseButton(e) && at(rows, e.getPoint())) {
                    open.run();
                }
            }

            private void popUp(MouseEvent e) {
                if (e.isPopupTrigger() && at(rows, e.getPoint())) {
                    rows.setSelectedIndex(rows.locationToIndex(e.getPoint()));
                    show(rows, e.getPoint());
                }
            }
        });
    }

    private static boolean at(JList<?> rows, Point point) {
        int index = rows.locationToIndex(point);
        return index >= 0 && rows.getCellBounds(index, index).contains(point);
    }

    private void atSelection(JList<ShelfRow> rows) {
        Rectangle cell = rows.getSelectedIndex() < 0
                ? null
                : rows.getCellBounds(rows.getSelectedIndex(), rows.getSelectedIndex());
        if (cell != null) {
            show(rows, new Point(cell.x + cell.width / 3, cell.y + cell.height / 2));
        }
    }

    @Messages({
        "RowMenu.open=Open its page",
        "RowMenu.edit=Edit",
        "RowMenu.standing=Move to",
        "RowMenu.piece=Add a piece of this kit"
    })
    private void show(JList<ShelfRow> rows, Point point) {
        ShelfRow row = rows.getSelectedValue();
        JPopupMenu menu = new JPopupMenu();
        if (row.isKit()) {
            menu.add(Bundle.RowMenu_piece()).addActionListener(e -> open.run());
        } else {
            menu.add(Bundle.RowMenu_open()).addActionListener(e -> open.run());
            JMenuItem edit = menu.add(Bundle.RowMenu_edit());
            edit.addActionListener(e -> PieceForm.edit(desk, row.id()));
            Needs.of(desk, Stash.class, edit);
            menu.add(standings(row));
        }
        menu.show(rows, point.x, point.y);
    }

    /** Made is not among them: completing a piece does more than that, and is done on its page. */
    private JMenu standings(ShelfRow row) {
        JMenu menu = Needs.of(desk, Stash.class, new JMenu(Bundle.RowMenu_standing()));
        Optional<Stash> stash = desk.workshop().find(Stash.class);
        for (Standing standing : Standing.values()) {
            if (standing != Standing.MADE && !row.standing().equals(Optional.of(standing))) {
                menu.add(PieceWords.standing(standing)).addActionListener(e -> {
                    Optional<About> today = Optional.of(About.on(LocalDate.now(desk.clock())));
                    desk.change(view -> stash.orElseThrow().setStanding(view, row.id(), standing, today));
                });
            }
        }
        if (row.standing().filter(Standing.MADE::equals).isEmpty()
                && Needs.words(desk, ActiveWork.class).isPresent()) {
            menu.add(Needs.of(desk, ActiveWork.class, new JMenuItem(PieceWords.standing(Standing.MADE))));
        }
        return menu;
    }
}
