package org.glintery.workbench.parts;

import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.Stable;
import org.openide.util.NbBundle.Messages;

/** The link behind which the figures of a plain answer stand. Event thread. */
@Stable
public final class HowWeKnow extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int WIDTH_PX = 420;
    private final JButton link;
    private String figures;

    @Messages("HowWeKnow.link=How we know")
    public HowWeKnow(String figures) {
        super(new MigLayout("insets 0"));
        setOpaque(false);
        this.figures = figures;
        link = Buttons.link(Bundle.HowWeKnow_link(), this::unfold);
        add(link);
        setFigures(figures);
    }

    /** Other figures; without any the link is hidden. */
    public void setFigures(String newFigures) {
        figures = newFigures;
        setVisible(!newFigures.isBlank());
    }

    private void unfold() {
        JPanel sheet = new JPanel(new MigLayout("insets " + Space.APART + ", fillx"));
        Texts.styled(sheet, "sheet");
        WrappedText text = Texts.body(figures);
        text.setFocusable(true);
        text.setSize(Space.px(WIDTH_PX), Short.MAX_VALUE); // so that the height is known before it is shown
        sheet.add(text, "w " + Space.px(WIDTH_PX) + "!");
        JPopupMenu popup = new JPopupMenu();
        popup.add(sheet);
        popup.show(link, 0, link.getHeight());
    }
}
