package org.glintery.storage.ui;

import java.awt.Component;
import java.awt.Point;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.DefaultListCellRenderer;
import javax.swing.DefaultListModel;
import javax.swing.DropMode;
import javax.swing.JList;
import javax.swing.ListSelectionModel;
import org.glintery.api.ledger.Spot;
import org.glintery.workbench.parts.DrillSwatch;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.parts.Space;
import org.openide.util.NbBundle.Messages;

/** The bags beside the holders; drills can be dragged out of one and into one. Event thread. */
final class BagList extends JList<CabinetSheet.BagLine> implements SpotPlace {

    private static final long serialVersionUID = 1L;
    private static final int ICON_PX = 18;

    private transient List<CabinetSheet.BagLine> all = List.of();
    private transient Set<Spot> lit = Set.of();
    private boolean searching;

    @Messages("BagList.name=Bags")
    BagList(SpotTransfer transfer) {
        super(new DefaultListModel<>());
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setDragEnabled(true);
        setDropMode(DropMode.ON);
        setCellRenderer(new Cell());
        getAccessibleContext().setAccessibleName(Bundle.BagList_name());
        transfer.serve(this);
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

    /** The bag's name, and what lies in it. */
    private static final class Cell extends DefaultListCellRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        @Messages({
            "# {0} - name",
            "# {1} - contents",
            "BagList.one={0}: {1}",
            "# {0} - name",
            "# {1} - how many kinds",
            "BagList.several={0}: {1} kinds of drills"
        })
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean selected, boolean focused) {
            CabinetSheet.BagLine bag = (CabinetSheet.BagLine) value;
            boolean one = bag.contents().size() == 1;
            String text = one
                    ? Bundle.BagList_one(bag.name(), CabinetWords.content(bag.contents().get(0)))
                    : Bundle.BagList_several(bag.name(), bag.contents().size());
            super.getListCellRendererComponent(list, text, index, selected, focused);
            setIcon(
                    one
                            ? DrillSwatch.icon(bag.contents().get(0).look(), ICON_PX)
                            : (bag.repairPacket() ? Pictogram.REPAIR_PACKET : Pictogram.BAG).at(ICON_PX));
            setBorder(Space.around(Space.TIGHT));
            setToolTipText(CabinetWords.contents(bag.contents()));
            return this;
        }
    }
}
