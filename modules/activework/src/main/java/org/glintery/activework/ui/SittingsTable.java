package org.glintery.activework.ui;

import java.util.List;
import javax.swing.table.AbstractTableModel;
import org.glintery.api.activework.Sitting;
import org.glintery.api.workshop.Stored;
import org.openide.util.NbBundle.Messages;

/** The rows of the sittings. Event thread. */
final class SittingsTable extends AbstractTableModel {

    private static final long serialVersionUID = 1L;
    /** Of the columns, in pixels at the usual text size; the note takes most. */
    static final int[] WIDTHS_PX = {140, 110, 90, 120, 260};

    private static final int COLUMNS = 5;

    private transient List<Stored<Sitting>> rows = List.of();

    /** Gives whether anything changed. */
    boolean show(List<Stored<Sitting>> sittings) {
        if (sittings.equals(rows)) {
            return false;
        }
        rows = sittings;
        fireTableDataChanged();
        return true;
    }

    Stored<Sitting> row(int index) {
        return rows.get(index);
    }

    @Override
    public int getRowCount() {
        return rows.size();
    }

    @Override
    public int getColumnCount() {
        return COLUMNS;
    }

    @Override
    @Messages({
        "SittingsTable.day=When",
        "SittingsTable.laid=Laid",
        "SittingsTable.minutes=How long",
        "SittingsTable.where=Where",
        "SittingsTable.note=Note"
    })
    public String getColumnName(int column) {
        return switch (column) {
            case 0 -> Bundle.SittingsTable_day();
            case 1 -> Bundle.SittingsTable_laid();
            case 2 -> Bundle.SittingsTable_minutes();
            case 3 -> Bundle.SittingsTable_where();
            default -> Bundle.SittingsTable_note();
        };
    }

    @Override
    public Object getValueAt(int row, int column) {
        Sitting sitting = rows.get(row).value();
        return switch (column) {
            case 0 -> sitting.day().words();
            case 1 -> LaidWords.of(sitting.laid());
            case 2 -> sitting.minutes().map(LaidWords::minutes).orElse("");
            case 3 -> sitting.where().orElse("");
            default -> sitting.note();
        };
    }
}
