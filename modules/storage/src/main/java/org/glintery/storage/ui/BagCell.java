package org.glintery.storage.ui;

import java.awt.Component;
import javax.swing.Icon;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.ledger.Balance;
import org.glintery.workbench.parts.DrillSwatch;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.openide.util.NbBundle.Messages;

/** A bag in the list: its name, and under it what lies in it. Event thread. */
final class BagCell extends JPanel implements ListCellRenderer<CabinetSheet.BagLine> {

    private static final long serialVersionUID = 1L;
    private static final int ICON_PX = 20;

    private final JLabel icon = new JLabel();
    private final JLabel name = Texts.line("");
    private final JLabel contents = Texts.hint("");

    BagCell() {
        super(new MigLayout(
                "insets " + Space.TIGHT + " " + Space.NEAR + ", fillx, gapx " + Space.NEAR + ", gapy 0",
                "[" + Space.px(ICON_PX) + "!][grow, fill]"));
        add(icon, "spany 2");
        add(name, "wmin 0, wrap");
        add(contents, "wmin 0");
    }

    @Override
    @Messages({
        "# {0} - how many",
        "# {1} - how many in words",
        "BagCell.several={0,choice,0#no drills|1#1 kind of drill|1<{1} kinds of drills}"
    })
    public Component getListCellRendererComponent(
            JList<? extends CabinetSheet.BagLine> list,
            CabinetSheet.BagLine bag,
            int index,
            boolean selected,
            boolean focused) {
        boolean one = bag.contents().size() == 1;
        icon.setIcon(one ? DrillSwatch.icon(bag.contents().get(0).look(), ICON_PX) : packet(bag));
        name.setText(bag.name());
        contents.setText(
                one
                        ? CabinetWords.content(bag.contents().get(0))
                        : Bundle.BagCell_several(
                                bag.contents().size(),
                                Balance.grouped(bag.contents().size())));
        setBackground(selected ? list.getSelectionBackground() : list.getBackground());
        name.setForeground(selected ? list.getSelectionForeground() : list.getForeground());
        setToolTipText(CabinetWords.bag(bag));
        getAccessibleContext().setAccessibleName(bag.name() + ", " + contents.getText());
        return this;
    }

    private static Icon packet(CabinetSheet.BagLine bag) {
        return (bag.repairPacket() ? Pictogram.REPAIR_PACKET : Pictogram.BAG).at(ICON_PX);
    }
}
