package org.glintery.stash.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import javax.swing.table.AbstractTableModel;
import org.glintery.api.stash.CardEntry;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.LineSupply;
import org.glintery.workbench.parts.DrillLook;
import org.openide.util.NbBundle;
import org.openide.util.NbBundle.Messages;

/** The lines of a legend as table rows. Edits are handed on and come back with the next sheet. Event thread. */
final class LegendTable extends AbstractTableModel {

    private static final long serialVersionUID = 1L;

    /** What a column shows, and how it is edited. */
    enum Column {
        SWATCH,
        SYMBOL,
        CODE,
        NAME,
        NEEDED,
        SUPPLIED,
        LAID,
        AT_HAND,
        MISSING;

        @Messages({
            "LegendTable.SWATCH=",
            "LegendTable.SYMBOL=Symbol",
            "LegendTable.CODE=Code",
            "LegendTable.NAME=Name",
            "LegendTable.NEEDED=Needed",
            "LegendTable.SUPPLIED=Supplied",
            "LegendTable.LAID=Laid",
            "LegendTable.AT_HAND=At hand",
            "LegendTable.MISSING=Missing"
        })
        String heading() {
            return NbBundle.getMessage(LegendTable.class, "LegendTable." + name());
        }

        boolean isEdited() {
            return this == SYMBOL || this == CODE || this == NAME || this == NEEDED || this == SUPPLIED;
        }

        boolean isNumber() {
            return ordinal() >= NEEDED.ordinal();
        }

        /** In pixels at the usual text size, so that headings and usual contents can be read. */
        int widthPx() {
            return switch (this) {
                case SWATCH -> 38;
                case NAME -> 150;
                case LAID -> 60;
                case AT_HAND -> 100;
                default -> 80;
            };
        }
    }

    private final transient BiConsumer<LegendLine, TypedLine> retyped;
    private final transient BiConsumer<LegendLine, CardEntry> described;
    private transient List<LegendSheet.Row> rows = List.of();

    /** @param retyped the line as shown, and as it is typed now @param described the line, and what its card is to say */
    LegendTable(BiConsumer<LegendLine, TypedLine> retyped, BiConsumer<LegendLine, CardEntry> described) {
        this.retyped = retyped;
        this.described = described;
    }

    void show(List<LegendSheet.Row> newRows) {
        if (!newRows.equals(rows)) {
            rows = newRows;
            fireTableDataChanged();
        }
    }

    LegendSheet.Row row(int index) {
        return rows.get(index);
    }

    List<LegendLine> lines(int[] indexes) {
        List<LegendLine> lines = new ArrayList<>();
        for (int index : indexes) {
            lines.add(rows.get(index).line());
        }
        return lines;
    }

    @Override
    public int getRowCount() {
        return rows.size();
    }

    @Override
    public int getColumnCount() {
        return Column.values().length;
    }

    @Override
    public String getColumnName(int column) {
        return Column.values()[column].heading();
    }

    @Override
    public Class<?> getColumnClass(int column) {
        return Column.values()[column] == Column.SWATCH ? DrillLook.class : String.class;
    }

    @Override
    public boolean isCellEditable(int row, int column) {
        return Column.values()[column].isEdited();
    }

    @Override
    public Object getValueAt(int index, int column) {
        LegendSheet.Row row = rows.get(index);
        TypedLine typed = TypedLine.of(row.line());
        return switch (Column.values()[column]) {
            case SWATCH -> row.look();
            case SYMBOL -> row.line().symbol();
            case CODE -> row.line().drill().code();
            case NAME -> row.entry().name().orElse("");
            case NEEDED -> typed.needed();
            case SUPPLIED -> typed.supplied();
            case LAID -> row.supply().map(LegendTable::laid).orElse("");
            case AT_HAND -> row.supply().map(supply -> supply.atHand().words()).orElse("");
            case MISSING -> row.supply().map(LegendTable::missing).orElse("");
        };
    }

    @Override
    public void setValueAt(Object value, int index, int column) {
        LegendSheet.Row row = rows.get(index);
        String text = String.valueOf(value).strip();
        if (text.equals(getValueAt(index, column))) {
            return;
        }
        TypedLine old = TypedLine.of(row.line());
        switch (Column.values()[column]) {
            case SYMBOL -> retyped.accept(row.line(), new TypedLine(text, old.code(), old.needed(), old.supplied()));
            case CODE -> retyped.accept(row.line(), new TypedLine(old.symbol(), text, old.needed(), old.supplied()));
            case NEEDED -> retyped.accept(row.line(), new TypedLine(old.symbol(), old.code(), text, old.supplied()));
            case SUPPLIED -> retyped.accept(row.line(), new TypedLine(old.symbol(), old.code(), old.needed(), text));
            case NAME -> described.accept(row.line(), named(row.entry(), text));
            default -> throw new IllegalArgumentException("not an edited column: " + column);
        }
    }

    private static CardEntry named(CardEntry entry, String name) {
        return new CardEntry(Optional.of(name).filter(n -> !n.isEmpty()), entry.hex(), entry.rough());
    }

    /** Sittings seldom say which drills they laid: nothing told by symbol is not the same as nothing laid. */
    private static String laid(LineSupply supply) {
        return supply.laid().isZero() ? "" : supply.laid().words();
    }

    @Messages({"LegendTable.notKnown=not known", "LegendTable.enough=enough"})
    private static String missing(LineSupply supply) {
        return supply.missing()
                .map(missing -> missing.isZero() ? Bundle.LegendTable_enough() : missing.words())
                .orElseGet(Bundle::LegendTable_notKnown);
    }
}
