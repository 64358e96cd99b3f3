package org.glintery.workbench.parts;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import javax.swing.JLabel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.SwingUtilities;
import javax.swing.table.TableCellRenderer;
import javax.swing.table.TableColumn;

/**
 * A table in which every column is as wide as what stands in it: wider than that where there is room, and where there is
 * not it scrolls sideways. What is too long even so is told whole where the pointer rests. Event thread.
 */
final class TableScroll extends JScrollPane {
    private static final long serialVersionUID = 1L;
    private static final int MOST_PX = 340;
    private static final int BESIDE_PX = 14;
    /** More rows than are looked at once say nothing new of the widths. */
    private static final int ROWS_READ = 200;

    private final JTable table;
    private final int[] leastPx;

    TableScroll(JTable table) {
        super(table);
        this.table = table;
        leastPx = new int[table.getColumnCount()];
        table.getModel().addTableModelListener(e -> SwingUtilities.invokeLater(this::fit));
        getViewport().addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent e) {
                fit();
            }
        });
        table.addMouseMotionListener(new MouseAdapter() {
            @Override
            public void mouseMoved(MouseEvent e) {
                table.setToolTipText(cutOff(table.rowAtPoint(e.getPoint()), table.columnAtPoint(e.getPoint())));
            }
        });
    }

    /** Room for the bar below, or it would cover the last row. */
    @Override
    public Dimension getPreferredSize() {
        Dimension size = super.getPreferredSize();
        int bar = scrollsSideways() ? getHorizontalScrollBar().getPreferredSize().height : 0;
        return new Dimension(size.width, size.height + bar);
    }

    boolean scrollsSideways() {
        return table.getAutoResizeMode() == JTable.AUTO_RESIZE_OFF;
    }

    private void fit() {
        if (table.isEditing()) {
            return; // other widths would end the typing
        }
        int sum = 0;
        for (int column = 0; column < table.getColumnCount(); column++) {
            TableColumn one = table.getColumnModel().getColumn(column);
            int wanted = Math.min(wanted(column), one.getMaxWidth());
            one.setPreferredWidth(wanted);
            sum += wanted;
        }
        int mode = sum > getViewport().getWidth() ? JTable.AUTO_RESIZE_OFF : JTable.AUTO_RESIZE_SUBSEQUENT_COLUMNS;
        if (mode != table.getAutoResizeMode()) {
            table.setAutoResizeMode(mode);
            revalidate();
        }
        table.setSize(Math.max(sum, getViewport().getWidth()), table.getHeight());
        table.doLayout();
    }

    private int wanted(int column) {
        if (leastPx[column] == 0) {
            leastPx[column] = table.getColumnModel().getColumn(column).getPreferredWidth();
        }
        int widest = 0;
        for (int row = 0; row < Math.min(ROWS_READ, table.getRowCount()); row++) {
            widest = Math.max(widest, cell(row, column).getPreferredSize().width);
        }
        int words = Math.min(widest + Space.px(BESIDE_PX), Space.px(MOST_PX));
        return Math.max(words, Math.max(leastPx[column], heading(column)));
    }

    private int heading(int column) {
        TableColumn one = table.getColumnModel().getColumn(column);
        TableCellRenderer renderer =
                one.getHeaderRenderer() == null ? table.getTableHeader().getDefaultRenderer() : one.getHeaderRenderer();
        Component shown = renderer.getTableCellRendererComponent(table, one.getHeaderValue(), false, false, -1, column);
        return shown.getPreferredSize().width + Space.px(BESIDE_PX);
    }

    private Component cell(int row, int column) {
        return table.prepareRenderer(table.getCellRenderer(row, column), row, column);
    }

    private String cutOff(int row, int column) {
        boolean fits = row < 0
                || column < 0
                || cell(row, column).getPreferredSize().width <= table.getCellRect(row, column, false).width;
        return !fits && cell(row, column) instanceof JLabel label ? label.getText() : null;
    }
}
