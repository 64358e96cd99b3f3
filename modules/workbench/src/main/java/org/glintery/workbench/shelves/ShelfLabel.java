package org.glintery.workbench.shelves;

import java.awt.Component;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;
import net.miginfocom.swing.MigLayout;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.piece.PieceWords;
import org.openide.util.NbBundle.Messages;

/** Paints the name of a shelf and how many pieces are on it. Event thread. */
final class ShelfLabel extends JPanel implements ListCellRenderer<ShelvesModel.Shelf> {
    static final int HEIGHT_PX = 28;
    private static final long serialVersionUID = 1L;
    private final JLabel name = new JLabel();
    private final JLabel count = Texts.hint("");

    ShelfLabel() {
        super(new MigLayout("insets 0 " + Space.APART + " 0 " + Space.APART + ", fill", "[grow, fill][]"));
        add(name);
        add(count);
    }

    @Override
    @Messages("ShelfLabel.all=All pieces")
    public Component getListCellRendererComponent(
            JList<? extends ShelvesModel.Shelf> list,
            ShelvesModel.Shelf shelf,
            int index,
            boolean selected,
            boolean focused) {
        name.setText(shelf.standing().map(PieceWords::standing).orElseGet(Bundle::ShelfLabel_all));
        count.setText(String.valueOf(shelf.count()));
        setBackground(selected ? list.getSelectionBackground() : list.getBackground());
        name.setForeground(selected ? list.getSelectionForeground() : list.getForeground());
        getAccessibleContext().setAccessibleName(name.getText() + ", " + count.getText());
        return this;
    }
}
