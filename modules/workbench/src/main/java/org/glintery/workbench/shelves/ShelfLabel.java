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
import org.glintery.workbench.words.Words;
import org.openide.util.NbBundle.Messages;

/** Paints the name of a shelf and how many pieces are on it. Event thread. */
final class ShelfLabel extends JPanel implements ListCellRenderer<ShelvesModel.Line> {
    static final int HEIGHT_PX = 28;
    private static final long serialVersionUID = 1L;
    private final JLabel name = new JLabel();
    private final JLabel count = Texts.hint("");

    ShelfLabel() {
        super(new MigLayout("insets 0 " + Space.APART + " 0 " + Space.APART + ", fill", "[grow, fill][]"));
        add(name);
        add(count);
    }

    @Messages({"ShelfLabel.all=All pieces", "ShelfLabel.kits=Kits without a piece"})
    static String words(ShelvesModel.Shelf shelf) {
        if (shelf.kitsAlone()) {
            return Bundle.ShelfLabel_kits();
        }
        return shelf.standing().map(PieceWords::standing).orElseGet(Bundle::ShelfLabel_all);
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends ShelvesModel.Line> list,
            ShelvesModel.Line line,
            int index,
            boolean selected,
            boolean focused) {
        name.setText(words(line.shelf()));
        setToolTipText(Words.tip(name.getText()).orElse(null));
        count.setText(String.valueOf(line.count()));
        setBackground(selected ? list.getSelectionBackground() : list.getBackground());
        name.setForeground(selected ? list.getSelectionForeground() : list.getForeground());
        getAccessibleContext().setAccessibleName(name.getText() + ", " + count.getText());
        return this;
    }
}
