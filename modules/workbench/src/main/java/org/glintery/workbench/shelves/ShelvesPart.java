package org.glintery.workbench.shelves;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.CardLayout;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JMenuItem;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.finishes.Finishes;
import org.glintery.api.stash.Stash;
import org.glintery.api.workshop.View;
import org.glintery.workbench.parts.Buttons;
import org.glintery.workbench.parts.EmptyNote;
import org.glintery.workbench.parts.Needs;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Typing;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.ScreenPart;
import org.openide.util.NbBundle.Messages;

/** The shelves: a field to search in, the standings with their counts, and the pieces. */
final class ShelvesPart implements ScreenPart<ShelfIndex> {
    private static final int LEAST_WIDTH_PX = 200;
    private final Desk desk;
    private final ShelvesModel model = new ShelvesModel();
    private final JTextField search = new JTextField();
    private final ShelfChooser shelves = new ShelfChooser(this::chosen);
    private final JList<ShelfRow> pieces = new JList<>();
    private final JPanel page = new JPanel(new CardLayout());
    private volatile ShelfIndex newest = ShelfIndex.EMPTY;

    ShelvesPart(Desk desk) {
        this.desk = desk;
        page.setOpaque(false);
        page.setMinimumSize(new java.awt.Dimension(Space.px(LEAST_WIDTH_PX), 0));
        page.add(new JLabel(), "not read yet");
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
        "ShelvesPart.oldFinish=Write old finishes"
    })
    private JComponent nothingYet() {
        return new EmptyNote(
                Pictogram.SHELVES,
                Bundle.ShelvesPart_nothing(),
                Bundle.ShelvesPart_first(),
                Needs.of(desk, Stash.class, Buttons.plain(Bundle.ShelvesPart_newKit(), () -> Entries.newKit(desk))),
                Needs.of(
                        desk,
                        Finishes.class,
                        Buttons.plain(Bundle.ShelvesPart_oldFinish(), () -> Entries.oldFinish(desk))));
    }

    @Messages({
        "ShelvesPart.search=Search",
        "ShelvesPart.searchAll=Search titles, kits, codes, standings, frames and stories",
        "ShelvesPart.pieces=Pieces",
        "ShelvesPart.add=Add",
        "ShelvesPart.piece=A piece of your own"
    })
    private JComponent lists() {
        search.putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, Bundle.ShelvesPart_search());
        search.putClientProperty(FlatClientProperties.TEXT_FIELD_LEADING_ICON, Pictogram.SEARCH.at(16));
        search.putClientProperty(FlatClientProperties.TEXT_FIELD_SHOW_CLEAR_BUTTON, true);
        search.setToolTipText(Bundle.ShelvesPart_searchAll());
        search.getAccessibleContext().setAccessibleName(Bundle.ShelvesPart_searchAll());
        Typing.into(search, this::typed);
        search.registerKeyboardAction(
                e -> pieces.requestFocusInWindow(), KeyStroke.getKeyStroke("DOWN"), JComponent.WHEN_FOCUSED);
        preparePieces();
        JPanel top =
                new JPanel(new MigLayout("insets " + Space.APART + ", fillx, gap " + Space.NEAR, "[grow, fill][]"));
        top.setOpaque(false);
        top.add(search, "wmin 0");
        top.add(addButton());
        JPanel panel = new JPanel(new MigLayout("insets 0, fill, wrap 1, gapy 0", "[grow, fill]", "[][][grow, fill]"));
        panel.setOpaque(false);
        panel.add(top, "wmin 0");
        panel.add(shelves, "wmin 0");
        JScrollPane scroll = new JScrollPane(pieces);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        panel.add(scroll, "wmin 0, gaptop " + Space.NEAR + ", hmin " + Space.px(2 * ShelfCell.HEIGHT_PX));
        return panel;
    }

    private JButton addButton() {
        JPopupMenu ways = new JPopupMenu();
        add(ways, Bundle.ShelvesPart_newKit(), Stash.class, () -> Entries.newKit(desk));
        add(ways, Bundle.ShelvesPart_piece(), Stash.class, () -> Entries.newPiece(desk));
        add(ways, Bundle.ShelvesPart_oldFinish(), Finishes.class, () -> Entries.oldFinish(desk));
        JButton[] button = new JButton[1];
        button[0] = Buttons.plain(
                Pictogram.ADD, Bundle.ShelvesPart_add(), () -> ways.show(button[0], 0, button[0].getHeight()));
        return button[0];
    }

    private void add(JPopupMenu ways, String text, Class<?> needed, Runnable way) {
        JMenuItem item = ways.add(text);
        item.addActionListener(e -> way.run());
        Needs.of(desk, needed, item);
    }

    private void preparePieces() {
        pieces.setCellRenderer(new ShelfCell(desk));
        pieces.setFixedCellHeight(Space.px(ShelfCell.HEIGHT_PX));
        pieces.setFixedCellWidth(1); // as wide as the list: long titles end in dots
        pieces.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        pieces.getAccessibleContext().setAccessibleName(Bundle.ShelvesPart_pieces());
        pieces.registerKeyboardAction(e -> open(), KeyStroke.getKeyStroke("ENTER"), JComponent.WHEN_FOCUSED);
        FocusSelects.first(pieces);
        RowMenu menu = new RowMenu(desk, this::open);
        menu.serve(pieces);
    }

    private void open() {
        Optional<ShelfRow> row = Optional.ofNullable(pieces.getSelectedValue());
        row.filter(r -> !r.isKit()).map(ShelfRow::id).ifPresent(desk::openPiece);
        row.filter(ShelfRow::isKit).ifPresent(kit -> Entries.newPieceOf(desk, kit.id(), kit.title()));
    }

    private void typed() {
        model.setQuery(search.getText());
        fill();
    }

    private void chosen(ShelvesModel.Shelf shelf) {
        model.choose(shelf);
        fill();
    }

    private void fill() {
        shelves.show(model.shelves(), model.chosen());
        UUID selected =
                Optional.ofNullable(pieces.getSelectedValue()).map(ShelfRow::id).orElse(null);
        List<ShelfRow> found = model.rows();
        DefaultListModel<ShelfRow> rows = new DefaultListModel<>();
        rows.addAll(found);
        pieces.setModel(rows);
        for (int i = 0; selected != null && i < found.size(); i++) {
            if (found.get(i).id().equals(selected)) {
                pieces.setSelectedIndex(i);
            }
        }
    }
}
