package org.glintery.workbench.parts;

import java.awt.Component;
import java.awt.event.MouseEvent;
import javax.swing.JLabel;
import javax.swing.SwingConstants;
import javax.swing.table.JTableHeader;
import javax.swing.table.TableCellRenderer;
import javax.swing.table.TableColumnModel;
import org.glintery.workbench.words.Words;

/**
 * The head of a table: each heading stands over its column, at the right over numbers, and where the pointer rests its
 * words are explained. Event thread.
 */
final class ExplainedHeader extends JTableHeader {
    private static final long serialVersionUID = 1L;

    /** @param name read aloud */
    ExplainedHeader(TableColumnModel columns, String name) {
        super(columns);
        getAccessibleContext().setAccessibleName(name);
    }

    @Override
    public String getToolTipText(MouseEvent event) {
        int column = columnAtPoint(event.getPoint());
        return column < 0
                ? null
                : Words.tip(String.valueOf(getColumnModel().getColumn(column).getHeaderValue()))
                        .orElse(null);
    }

    @Override
    protected TableCellRenderer createDefaultRenderer() {
        TableCellRenderer usual = super.createDefaultRenderer();
        return (table, value, selected, focused, row, column) -> {
            Component shown = usual.getTableCellRendererComponent(table, value, selected, focused, row, column);
            if (shown instanceof JLabel heading) {
                heading.setHorizontalAlignment(isOfNumbers(column) ? SwingConstants.TRAILING : SwingConstants.LEADING);
            }
            return shown;
        };
    }

    /** Another look and feel brings another way to draw headings. */
    @Override
    public void updateUI() {
        super.updateUI();
        if (getDefaultRenderer() != null) {
            setDefaultRenderer(createDefaultRenderer());
        }
    }

    private boolean isOfNumbers(int column) {
        return column >= 0
                && getColumnModel().getColumn(column).getCellRenderer() instanceof JLabel cell
                && cell.getHorizontalAlignment() == SwingConstants.TRAILING;
    }
}
