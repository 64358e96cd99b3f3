package org.glintery.workbench.shelves;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.CardLayout;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Optional;
import java.util.UUID;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.workshop.View;
import org.glintery.workbench.parts.Buttons;
import org.glintery.workbench.parts.EmptyNote;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.ScreenPart;
import org.openide.util.NbBundle.Messages;

/** The shelves: a field to search in, the standings with their counts, and the pieces. */
final class ShelvesPart implements ScreenPart<ShelfIndex> {
    private static final int LEAST_WIDTH_PX = 240;
    private final Desk desk;
    private final ShelvesModel model = new ShelvesModel();
    private final JTextField search = new JTextField();
    private final JList<ShelvesModel.Shelf> shelves = new JList<>();
    private final JList<ShelfRow> pieces = new JList<>();
    private final JPanel page = new JPanel(new CardLayout());
    private volatile ShelfIndex newest = ShelfIndex.EMPTY;
    private boolean filling;

    ShelvesPart(Desk desk) {
        this.desk = desk;
        page.setOpaque(false);
        page.setMinimumSize(new java.awt.Dimension(Space.px(LEAST_WIDTH_PX), 0));
        page.add(nothingYet(), "nothing");
        page.add(lists(), "lists");
        page.setTransferHandler(new ShelfDrop(desk));
    }

    @Override
    public ShelfIndex prepare(View view) {
        newest = ShelfIndex.of(view, newest);
        return newest;
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public void show(ShelfIndex index) {
        model.setIndex(index);
        fill();
        ((CardLayout) page.getLayout()).show(page, model.nothingYet() ? "nothing" : "lists");
    }

    @Messages({
        "ShelvesPart.nothing=Nothing is shelved yet",
        "ShelvesPart.first=Begin with a kit you have, or write down a piece you finished. A photo or a legend file can be dropped here.",
        "ShelvesPart.newKit=Shelve a kit",
        "ShelvesPart.oldFinish=Write an old finish"
    })
    private JComponent nothingYet() {
        return new EmptyNote(
                Pictogram.SHELVES,
                Bundle.ShelvesPart_nothing(),
                Bundle.ShelvesPart_first(),
                Buttons.plain(Bundle.ShelvesPart_newKit(), () -> Entries.newKit(desk)),
                Buttons.plain(Bundle.ShelvesPart_oldFinish(), () -> Entries.oldFinish(desk)));
    }

    @Messages({
        "ShelvesPart.search=Search titles, kits and codes",
        "ShelvesPart.standings=Standings",
        "ShelvesPart.pieces=Pieces",
        "ShelvesPart.add=Add",
        "ShelvesPart.piece=A piece of your own"
    })
    private JComponent lists() {
        search.putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, Bundle.ShelvesPart_search());
        search.putClientProperty(FlatClientProperties.TEXT_FIELD_LEADING_ICON, Pictogram.SEARCH.at(16));
        search.putClientProperty(FlatClientProperties.TEXT_FIELD_SHOW_CLEAR_BUTTON, true);
        search.getAccessibleContext().setAccessibleName(Bundle.ShelvesPart_search());
        search.getDocument().addDocumentListener(new Typing());
        search.registerKeyboardAction(
                e -> pieces.requestFocusInWindow(), KeyStroke.getKeyStroke("DOWN"), JComponent.WHEN_FOCUSED);
        prepareLists();
        JPanel panel = new JPanel(
                new MigLayout("insets 0, fill, wrap 1, gapy 0", "[grow, fill]", "[][shrinkprio 200][grow, fill]"));
        panel.setOpaque(false);
        JPanel top =
                new JPanel(new MigLayout("insets " + Space.APART + ", fillx, gap " + Space.NEAR, "[grow, fill][]"));
        top.setOpaque(false);
        top.add(search, "wmin 0");
        top.add(addButton());
        panel.add(top);
        panel.add(unframed(shelves), "wmin 0, hmin " + Space.px(4 * ShelfLabel.HEIGHT_PX));
        panel.add(unframed(pieces), "wmin 0, gaptop " + Space.NEAR + ", hmin " + Space.px(3 * ShelfCell.HEIGHT_PX));
        return panel;
    }

    private static JScrollPane unframed(JList<?> list) {
        JScrollPane scroll = new JScrollPane(list);
        scroll.setBorder(javax.swing.BorderFactory.createEmptyBorder());
        scroll.setOpaque(false);
        scroll.getViewport().setOpaque(list.isOpaque());
        return scroll;
    }

    private JButton addButton() {
        JPopupMenu ways = new JPopupMenu();
        ways.add(Bundle.ShelvesPart_newKit()).addActionListener(e -> Entries.newKit(desk));
        ways.add(Bundle.ShelvesPart_piece()).addActionListener(e -> Entries.newPiece(desk));
        ways.add(Bundle.ShelvesPart_oldFinish()).addActionListener(e -> Entries.oldFinish(desk));
        JButton[] button = new JButton[1];
        button[0] = Buttons.plain(
                Pictogram.ADD, Bundle.ShelvesPart_add(), () -> ways.show(button[0], 0, button[0].getHeight()));
        return button[0];
    }

    private void prepareLists() {
        shelves.setCellRenderer(new ShelfLabel());
        shelves.setVisibleRowCount(8);
        shelves.setFixedCellHeight(Space.px(ShelfLabel.HEIGHT_PX));
        shelves.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        shelves.setOpaque(false);
        shelves.setBackground(new java.awt.Color(0, true));
        shelves.getAccessibleContext().setAccessibleName(Bundle.ShelvesPart_standings());
        shelves.addListSelectionListener(e -> chosen());
        pieces.setCellRenderer(new ShelfCell(desk));
        pieces.setFixedCellHeight(Space.px(ShelfCell.HEIGHT_PX));
        pieces.setFixedCellWidth(1); // as wide as the list: long titles end in dots
        pieces.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        pieces.getAccessibleContext().setAccessibleName(Bundle.ShelvesPart_pieces());
        pieces.registerKeyboardAction(e -> open(), KeyStroke.getKeyStroke("ENTER"), JComponent.WHEN_FOCUSED);
        pieces.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                open();
            }
        });
    }

    private void open() {
        Optional.ofNullable(pieces.getSelectedValue()).map(ShelfRow::piece).ifPresent(desk::openPiece);
    }

    private void chosen() {
        if (!filling && shelves.getSelectedValue() != null) {
            model.choose(shelves.getSelectedValue().standing());
            fill();
        }
    }

    private void fill() {
        filling = true;
        UUID selected = Optional.ofNullable(pieces.getSelectedValue())
                .map(ShelfRow::piece)
                .orElse(null);
        DefaultListModel<ShelvesModel.Shelf> names = new DefaultListModel<>();
        names.addAll(model.shelves());
        shelves.setModel(names);
        for (int i = 0; i < names.size(); i++) {
            if (names.get(i).standing().equals(model.chosen())) {
                shelves.setSelectedIndex(i);
            }
        }
        DefaultListModel<ShelfRow> rows = new DefaultListModel<>();
        rows.addAll(model.rows());
        pieces.setModel(rows);
        for (int i = 0; selected != null && i < rows.size(); i++) {
            if (rows.get(i).piece().equals(selected)) {
                pieces.setSelectedIndex(i);
            }
        }
        filling = false;
    }

    private final class Typing implements DocumentListener {
        @Override
        public void insertUpdate(DocumentEvent e) {
            typed();
        }

        @Override
        public void removeUpdate(DocumentEvent e) {
            typed();
        }

        @Override
        public void changedUpdate(DocumentEvent e) {
            typed();
        }

        private void typed() {
            model.setQuery(search.getText());
            fill();
        }
    }
}
