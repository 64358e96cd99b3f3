package org.glintery.storage.ui;

import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.DefaultListModel;
import javax.swing.DropMode;
import javax.swing.JList;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import org.glintery.api.ledger.Spot;
import org.openide.util.NbBundle.Messages;

/** The bags beside the holders; drills can be dragged out of one and into one. Event thread. */
final class BagList extends JList<CabinetSheet.BagLine> implements SpotPlace {

    private static final long serialVersionUID = 1L;

    private transient List<CabinetSheet.BagLine> all = List.of();
    private transient Set<Spot> lit = Set.of();
    private boolean searching;

    @Messages("BagList.name=Bags")
    BagList(SpotTransfer transfer, SpotMenu menu) {
        super(new DefaultListModel<>());
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setDragEnabled(true);
        setDropMode(DropMode.ON);
        setCellRenderer(new BagCell());
        getAccessibleContext().setAccessibleName(Bundle.BagList_name());
        transfer.serve(this);
        registerKeyboardAction(e -> popUp(menu), KeyStroke.getKeyStroke("CONTEXT_MENU"), WHEN_FOCUSED);
        registerKeyboardAction(e -> popUp(menu), KeyStroke.getKeyStroke("shift F10"), WHEN_FOCUSED);
        registerKeyboardAction(e -> popUp(menu), KeyStroke.getKeyStroke("ENTER"), WHEN_FOCUSED);
        addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent e) {
                trigger(e);
            }

            @Override
            public void mouseReleased(MouseEvent e) {
                trigger(e);
            }

            private void trigger(MouseEvent e) {
                if (e.isPopupTrigger() && at(e.getPoint()).isPresent()) {
                    setSelectedIndex(locationToIndex(e.getPoint()));
                    menu.show(BagList.this, e.getPoint(), getSelectedValue());
                }
            }
        });
    }

    void show(List<CabinetSheet.BagLine> bags) {
        if (!bags.equals(all)) {
            all = bags;
            fill();
        }
    }

    void light(Set<Spot> spots, boolean newSearching) {
        lit = spots;
        searching = newSearching;
        fill();
    }

    @Override
    public Optional<Spot> picked() {
        return cursor();
    }

    @Override
    public Optional<Spot> cursor() {
        return Optional.ofNullable(getSelectedValue()).map(CabinetSheet.BagLine::spot);
    }

    @Override
    public Optional<Spot> at(Point point) {
        int index = locationToIndex(point);
        return index >= 0 && getCellBounds(index, index).contains(point)
                ? Optional.of(getModel().getElementAt(index).spot())
                : Optional.empty();
    }

    private void popUp(SpotMenu menu) {
        if (getSelectedIndex() >= 0) {
            Rectangle cell = getCellBounds(getSelectedIndex(), getSelectedIndex());
            menu.show(this, new Point(cell.x + cell.width / 3, cell.y + cell.height / 2), getSelectedValue());
        }
    }

    private void fill() {
        DefaultListModel<CabinetSheet.BagLine> model = new DefaultListModel<>();
        all.stream().filter(bag -> !searching || lit.contains(bag.spot())).forEach(model::addElement);
        Optional<Spot> selected = cursor();
        setModel(model);
        selected.ifPresent(spot -> {
            for (int i = 0; i < model.size(); i++) {
                if (model.get(i).spot().equals(spot)) {
                    setSelectedIndex(i);
                }
            }
        });
    }

    /** Long names and contents are cut at the edge; the tooltip tells all. */
    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }
}
