package org.glintery.stash.ui;

import java.awt.Component;
import java.util.function.IntPredicate;
import javax.swing.JTable;
import javax.swing.table.DefaultTableCellRenderer;
import org.glintery.workbench.parts.Pictogram;
import org.openide.util.NbBundle.Messages;

/** A symbol; one that stands on several lines carries a mark and says so. Event thread. */
final class RepeatedSymbol extends DefaultTableCellRenderer {

    private static final long serialVersionUID = 1L;
    private static final int ICON_PX = 16;

    private final transient IntPredicate repeated;

    RepeatedSymbol(IntPredicate repeated) {
        this.repeated = repeated;
    }

    @Override
    @Messages("RepeatedSymbol.tip=This symbol stands on several lines. Misprinted legends do that; both were kept.")
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean selected, boolean focused, int row, int column) {
        super.getTableCellRendererComponent(table, value, selected, focused, row, column);
        boolean twice = repeated.test(table.convertRowIndexToModel(row));
        setIcon(twice ? Pictogram.WARNING.at(ICON_PX) : null);
        setToolTipText(twice ? Bundle.RepeatedSymbol_tip() : null);
        return this;
    }
}
