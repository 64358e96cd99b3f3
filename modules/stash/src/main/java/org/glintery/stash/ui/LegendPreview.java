package org.glintery.stash.ui;

import java.util.Map;
import java.util.stream.Collectors;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.table.DefaultTableModel;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.exchange.LegendReader.BadRow;
import org.glintery.api.exchange.LegendReader.Reading;
import org.glintery.api.ledger.Balance;
import org.glintery.api.stash.CardEntry;
import org.glintery.api.stash.LegendLine;
import org.glintery.workbench.parts.DrillLook;
import org.glintery.workbench.parts.DrillSwatch;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Tables;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.parts.WrappedText;
import org.openide.util.NbBundle.Messages;

/** What was understood of a legend before any of it is taken in: columns, lines, and the rows that are bad. */
final class LegendPreview extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int WIDTH_PX = 640;
    private static final int HEIGHT_PX = 300;
    private static final int SWATCH_PX = 20;

    private final JCheckBox replace;

    @Messages({
        "# {0} - separator",
        "LegendPreview.read=Understood as a table whose columns are set apart by {0}.",
        "# {0} - encoding",
        "LegendPreview.letters=How its letters were read: {0}. If some look wrong, save the file anew with the encoding UTF-8.",
        "# {0} - how many",
        "# {1} - how many in words",
        "LegendPreview.bad={0,choice,1#One row|1<{1} rows} can''t be taken in. Nothing is, until {0,choice,1#it is|1<they are} right:",
        "LegendPreview.replace=Replace the lines that are there",
        "LegendPreview.table=Lines as they were understood"
    })
    LegendPreview(Reading reading, boolean offerReplace) {
        super(new MigLayout(
                "insets 0, wrap 1, gapy " + Space.NEAR, "[" + Space.px(WIDTH_PX) + "!, fill]", "[][][grow, fill][]"));
        setOpaque(false);
        replace = new JCheckBox(Bundle.LegendPreview_replace());
        replace.setOpaque(false);
        add(understood(reading), "wmin 0");
        add(Texts.body(columns(reading)), "wmin 0");
        add(Tables.scrolling(table(reading)), "h " + Space.px(HEIGHT_PX) + "!");
        if (!reading.badRows().isEmpty()) {
            add(Texts.trouble(Bundle.LegendPreview_bad(
                    reading.badRows().size(), Balance.grouped(reading.badRows().size()))));
            add(Texts.body(badRows(reading)), "wmin 0");
        }
        reading.warnings().stream().limit(8).forEach(warning -> add(Texts.wrappedHint(warning), "wmin 0"));
        if (offerReplace) {
            add(replace);
        }
    }

    /** The name of an encoding helps few, so it stands where it is looked for. */
    static WrappedText understood(Reading reading) {
        WrappedText words = Texts.wrappedHint(Bundle.LegendPreview_read(reading.separator()));
        words.setToolTipText(Bundle.LegendPreview_letters(reading.encoding()));
        return words;
    }

    boolean replaces() {
        return replace.isSelected();
    }

    @Messages({"# {0} - header", "# {1} - what it is", "LegendPreview.column={0} is {1}"})
    private static String columns(Reading reading) {
        return reading.columns().entrySet().stream()
                .map(column -> Bundle.LegendPreview_column(column.getKey(), column.getValue()))
                .collect(Collectors.joining("; "));
    }

    @Messages({"# {0} - line", "# {1} - reason", "LegendPreview.row=Line {0}: {1}"})
    private static String badRows(Reading reading) {
        return reading.badRows().stream()
                .limit(12)
                .map((BadRow row) -> Bundle.LegendPreview_row(String.valueOf(row.line()), row.reason()))
                .collect(Collectors.joining("\n"));
    }

    private static JTable table(Reading reading) {
        DefaultTableModel model = new DefaultTableModel(
                new Object[] {
                    "",
                    LegendTable.Column.SYMBOL.heading(),
                    LegendTable.Column.CODE.heading(),
                    LegendTable.Column.NAME.heading(),
                    LegendTable.Column.NEEDED.heading(),
                    LegendTable.Column.SUPPLIED.heading()
                },
                0);
        Map<String, CardEntry> entries = reading.entries();
        for (LegendLine line : reading.lines()) {
            CardEntry entry = entries.getOrDefault(line.drill().code(), CardEntry.UNKNOWN);
            TypedLine typed = TypedLine.of(line);
            model.addRow(new Object[] {
                DrillLook.of(line.drill(), entry),
                typed.symbol(),
                typed.code(),
                entry.name().orElse(""),
                typed.needed(),
                typed.supplied()
            });
        }
        JTable table = Tables.readable(new JTable(model), Bundle.LegendPreview_table());
        table.setEnabled(false);
        table.getColumnModel()
                .getColumn(0)
                .setCellRenderer(Tables.cells(DrillLook.class, look -> DrillSwatch.icon(look, SWATCH_PX), look -> ""));
        table.getColumnModel().getColumn(0).setMaxWidth(Space.px(36));
        return table;
    }
}
