package org.glintery.workbench.shelves;

import java.awt.CardLayout;
import java.awt.Color;
import java.awt.Dimension;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.DefaultListModel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import org.glintery.workbench.parts.ChoiceBox;
import org.glintery.workbench.parts.Space;
import org.openide.util.NbBundle.Messages;

/** The shelves to choose from: a list, or one line to unfold in a low window. Event thread. */
final class ShelfChooser extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int LOW_WINDOW_PX = 480;
    private final JList<ShelvesModel.Line> list = new JList<>();
    private final ChoiceBox<ShelvesModel.Line> box;
    private final transient Consumer<ShelvesModel.Shelf> chosen;
    private boolean filling;
    private boolean low;

    @Messages({"ShelfChooser.name=Shelves", "# {0} - shelf", "# {1} - how many", "ShelfChooser.line={0} ({1})"})
    ShelfChooser(Consumer<ShelvesModel.Shelf> chosen) {
        super(new CardLayout());
        this.chosen = chosen;
        setOpaque(false);
        box = new ChoiceBox<>(List.of(), ShelfChooser::words, line -> chosen.accept(line.shelf()));
        box.getAccessibleContext().setAccessibleName(Bundle.ShelfChooser_name());
        list.setCellRenderer(new ShelfLabel());
        list.setFixedCellHeight(Space.px(ShelfLabel.HEIGHT_PX));
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setOpaque(false);
        list.setBackground(new Color(0, true));
        list.getAccessibleContext().setAccessibleName(Bundle.ShelfChooser_name());
        list.addListSelectionListener(e -> choose());
        JPanel framed = new JPanel(new java.awt.BorderLayout());
        framed.setOpaque(false);
        framed.setBorder(
                javax.swing.BorderFactory.createEmptyBorder(0, Space.px(Space.APART), 0, Space.px(Space.APART)));
        framed.add(box);
        add(list, "list");
        add(framed, "box");
    }

    void show(List<ShelvesModel.Line> lines, ShelvesModel.Shelf now) {
        filling = true;
        DefaultListModel<ShelvesModel.Line> model = new DefaultListModel<>();
        model.addAll(lines);
        list.setModel(model);
        for (ShelvesModel.Line line : lines) {
            if (line.shelf().equals(now)) {
                list.setSelectedValue(line, false);
                box.show(lines, line);
            }
        }
        filling = false;
        revalidate();
    }

    private void choose() {
        if (!filling && list.getSelectedValue() != null) {
            chosen.accept(list.getSelectedValue().shelf());
        }
    }

    private static String words(ShelvesModel.Line line) {
        return Bundle.ShelfChooser_line(ShelfLabel.words(line.shelf()), String.valueOf(line.count()));
    }

    /** Looks at the height of the window each time it is laid out anew. */
    @Override
    public Dimension getPreferredSize() {
        return low
                ? new Dimension(0, box.getPreferredSize().height)
                : new Dimension(0, list.getModel().getSize() * Space.px(ShelfLabel.HEIGHT_PX));
    }

    @Override
    public Dimension getMinimumSize() {
        return getPreferredSize();
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        super.setBounds(x, y, width, height);
        boolean lowNow = getParent() != null && getParent().getHeight() < Space.px(LOW_WINDOW_PX);
        if (lowNow != low) {
            low = lowNow;
            ((CardLayout) getLayout()).show(this, low ? "box" : "list");
            SwingUtilities.invokeLater(this::revalidate);
        }
    }
}
