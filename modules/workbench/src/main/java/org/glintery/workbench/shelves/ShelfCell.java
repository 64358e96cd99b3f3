package org.glintery.workbench.shelves;

import java.awt.Component;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.parts.Tone;
import org.glintery.workbench.piece.PieceWords;
import org.glintery.workbench.spi.Desk;
import org.openide.util.NbBundle.Messages;

/** Paints one piece on the shelves: small picture, title, and what else tells it apart. Event thread. */
final class ShelfCell extends JPanel implements ListCellRenderer<ShelfRow> {
    static final int HEIGHT_PX = 60;
    private static final long serialVersionUID = 1L;
    private static final int PICTURE_PX = 44;
    private final JLabel picture = new JLabel("", SwingConstants.CENTER);
    private final JLabel title = new JLabel();
    private final JLabel second = Texts.hint("");
    private final transient SmallPictures pictures;

    ShelfCell(Desk desk) {
        super(new MigLayout(
                "insets " + Space.NEAR + " " + Space.APART + " " + Space.NEAR + " " + Space.NEAR
                        + ", fillx, novisualpadding",
                "[" + Space.px(PICTURE_PX) + "!]" + Space.APART + "[grow, fill]",
                "[grow, bottom]2[grow, top]"));
        pictures = new SmallPictures(desk, Space.px(PICTURE_PX));
        add(picture, "spany 2, h " + Space.px(PICTURE_PX) + "!, growx");
        add(title, "wrap, wmin 0");
        add(second, "wmin 0");
    }

    @Override
    @Messages({
        "ShelfCell.kit=A kit without a piece yet",
        "# {0} - title",
        "# {1} - standing and what else is said of it",
        "ShelfCell.whole={0} ({1})"
    })
    public Component getListCellRendererComponent(
            JList<? extends ShelfRow> list, ShelfRow row, int index, boolean selected, boolean focused) {
        picture.setIcon(pictures.of(row.picture(), list));
        title.setText(row.title());
        String standing = row.standing().map(PieceWords::standing).orElseGet(Bundle::ShelfCell_kit);
        second.setText(row.second().isEmpty() ? standing : standing + " · " + row.second());
        setBackground(selected ? list.getSelectionBackground() : list.getBackground());
        second.setForeground(selected ? list.getSelectionForeground() : Tone.FAINT.colour());
        title.setForeground(selected ? list.getSelectionForeground() : list.getForeground());
        getAccessibleContext().setAccessibleName(row.title() + ", " + second.getText());
        setToolTipText(isCut(list.getWidth()) ? Bundle.ShelfCell_whole(title.getText(), second.getText()) : null);
        return this;
    }

    private boolean isCut(int widthPx) {
        int words = Math.max(title.getPreferredSize().width, second.getPreferredSize().width);
        return words > widthPx - Space.px(PICTURE_PX + Space.NEAR + 2 * Space.APART);
    }
}
