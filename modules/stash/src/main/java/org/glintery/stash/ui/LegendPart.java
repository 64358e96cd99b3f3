package org.glintery.stash.ui;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import javax.swing.JColorChooser;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTable;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.GlinteryException;
import org.glintery.api.Result;
import org.glintery.api.exchange.LegendReader.Assumed;
import org.glintery.api.stash.CardEntry;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.Source;
import org.glintery.api.stash.Stash;
import org.glintery.api.workshop.View;
import org.glintery.stash.ui.LegendTable.Column;
import org.glintery.workbench.parts.BesideOrBelow;
import org.glintery.workbench.parts.Buttons;
import org.glintery.workbench.parts.DrillLook;
import org.glintery.workbench.parts.DrillSwatch;
import org.glintery.workbench.parts.PageScroll;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.parts.PictureDrop;
import org.glintery.workbench.parts.SectionHeading;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Tables;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.parts.WrappedText;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.ScreenPart;
import org.openide.util.NbBundle.Messages;

/** The legend tab: its lines, the fields to type the next one, and the photo to type from. */
final class LegendPart implements ScreenPart<LegendSheet> {

    private static final int SWATCH_PX = 22;
    private static final int LEFT_PX = 420;
    private static final int PHOTO_PX = 290;
    private static final int ROWS_AT_LEAST = 6;

    private final Desk desk;
    private final UUID piece;
    private final Stash stash;
    private final LegendEdits edits;
    private final LegendImport imports;
    private final LegendTable model = new LegendTable(this::retype, this::describe);
    private final JTable table;
    private final LegendEntry entry;
    private int drillsPerBag = Source.USUAL_DRILLS_PER_BAG;
    private final LegendPhoto photo;
    private final WrappedText summary = Texts.wrappedHint("");
    private final BesideOrBelow both;
    private final JComponent page;

    @Messages({
        "LegendPart.table=Lines of the legend",
        "LegendPart.heading=Legend",
        "LegendPart.paste=Paste",
        "LegendPart.read=Read a file",
        "LegendPart.photo=Photo",
        "LegendPart.remove=Remove the line"
    })
    LegendPart(Desk desk, UUID piece) {
        this.desk = desk;
        this.piece = piece;
        this.stash = desk.workshop()
                .find(Stash.class)
                .orElseThrow(() -> new GlinteryException("the stash brings this tab but not its service"));
        edits = new LegendEdits(stash, piece);
        imports = new LegendImport(desk, edits);
        entry = new LegendEntry(line -> desk.change(edits.add(line)), this::paste);
        photo = new LegendPhoto(desk, taken -> desk.change(edits.keepPhoto(taken)));
        table = Tables.readable(new JTable(model), Bundle.LegendPart_table());
        dress();
        both = new BesideOrBelow(left(), LEFT_PX, photo, PHOTO_PX);
        both.setBorder(Space.around(Space.SECTION));
        page = new PageScroll(both);
        PictureDrop.onto(both, desk, taken -> desk.change(edits.keepPhoto(taken)));
    }

    private JPanel left() {
        JPanel left = new JPanel(
                new MigLayout("insets 0, fill, wrap 1, gapy " + Space.APART, "[grow, fill]", "[][][grow, fill][]"));
        left.setOpaque(false);
        left.add(
                new SectionHeading(
                        Bundle.LegendPart_heading(),
                        Buttons.plain(
                                Pictogram.IMPORT,
                                Bundle.LegendPart_read(),
                                () -> imports.fromFile(left, assumed(), model.getRowCount() > 0)),
                        Buttons.plain(Pictogram.ADD, Bundle.LegendPart_paste(), this::paste),
                        Buttons.plain(Pictogram.PICTURE, Bundle.LegendPart_photo(), photo::choose),
                        Buttons.plain(Pictogram.REMOVE, Bundle.LegendPart_remove(), this::remove)),
                "wmin 0");
        left.add(summary, "wmin 0");
        table.setPreferredScrollableViewportSize(
                new Dimension(Space.px(Space.READING_WIDTH), ROWS_AT_LEAST * table.getRowHeight()));
        left.add(Tables.scrolling(table), "wmin 0");
        left.add(entry, "wmin 0");
        return left;
    }

    @Override
    public LegendSheet prepare(View view) {
        return LegendSheet.of(view, stash, piece);
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public void show(LegendSheet sheet) {
        if (!table.isEditing()) {
            int selected = table.getSelectedRow();
            model.show(sheet.rows());
            if (selected >= 0 && selected < model.getRowCount()) {
                table.setRowSelectionInterval(selected, selected);
            }
        }
        entry.offer(sheet.cards(), sheet.next(), sheet.drillsPerBag());
        drillsPerBag = sheet.drillsPerBag();
        photo.show(sheet.photo());
        both.revalidate();
        summary.setText(LegendSummary.of(sheet));
    }

    private void dress() {
        for (Column column : Column.values()) {
            var shown = table.getColumnModel().getColumn(column.ordinal());
            shown.setPreferredWidth(Space.px(column.widthPx()));
            if (column.isNumber()) {
                shown.setCellRenderer(Tables.numbers());
            }
        }
        var swatch = table.getColumnModel().getColumn(Column.SWATCH.ordinal());
        swatch.setMaxWidth(Space.px(SWATCH_PX + 16));
        swatch.setCellRenderer(Tables.cells(DrillLook.class, look -> DrillSwatch.icon(look, SWATCH_PX), look -> ""));
        table.getColumnModel()
                .getColumn(Column.SYMBOL.ordinal())
                .setCellRenderer(new RepeatedSymbol(row -> model.row(row).repeated()));
        table.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                int row = table.rowAtPoint(e.getPoint());
                if (e.getClickCount() == 2 && row >= 0 && table.columnAtPoint(e.getPoint()) == 0) {
                    chooseColour(model.row(row));
                }
            }
        });
        Tables.onKey(table, "control V", this::paste);
        Tables.onKey(table, "DELETE", this::remove);
        Tables.onKey(table, "SPACE", () -> chosenRow().ifPresent(this::chooseColour));
    }

    private Optional<LegendSheet.Row> chosenRow() {
        boolean onSwatch = table.getSelectedColumn() == Column.SWATCH.ordinal();
        return onSwatch && table.getSelectedRow() >= 0
                ? Optional.of(model.row(table.getSelectedRow()))
                : Optional.empty();
    }

    private Assumed assumed() {
        return new Assumed(entry.chosenCard(), Optional.of(entry.chosenShape()), drillsPerBag);
    }

    private void paste() {
        imports.fromClipboard(assumed(), model.getRowCount() > 0);
    }

    private void remove() {
        if (table.getSelectedRowCount() > 0) {
            desk.change(edits.remove(model.lines(table.getSelectedRows())));
        }
    }

    private void retype(LegendLine shown, TypedLine typed) {
        Result<LegendLine> now = typed.understood(shown.drill(), shown.extras(), drillsPerBag);
        if (now instanceof Result.Ok<LegendLine> ok) {
            desk.change(edits.replace(shown, ok.value()));
        } else if (now instanceof Result.Refused<LegendLine> no) {
            desk.say(no.refusal().text());
        }
    }

    private void describe(LegendLine line, CardEntry entry) {
        desk.change(edits.describe(line, entry));
    }

    @Messages({"# {0} - code", "LegendPart.colour=Colour of {0}"})
    private void chooseColour(LegendSheet.Row row) {
        Color now = row.look().colour().orElse(Color.WHITE);
        Color chosen = JColorChooser.showDialog(
                both, Bundle.LegendPart_colour(row.line().drill().code()), now);
        if (chosen != null) {
            String hex = String.format(Locale.ROOT, "#%06x", chosen.getRGB() & 0xffffff);
            describe(row.line(), new CardEntry(row.entry().name(), Optional.of(hex), false));
        }
    }
}
