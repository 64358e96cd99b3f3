package org.glintery.workbench.parts;

import java.awt.Component;
import java.util.function.Function;
import javax.swing.Icon;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableCellRenderer;
import org.glintery.api.Stable;

/** Tables with rows that can be read and a focus that can be seen. Event thread. */
@Stable
public final class Tables {
    private static final int ROW_PX = 30;

    private Tables() {}

    /** Gives a table the looks of the theme. @param name read aloud */
    public static JTable readable(JTable table, String name) {
        table.setRowHeight(Space.px(ROW_PX));
        table.setFillsViewportHeight(true);
        table.setTableHeader(new ExplainedHeader(table.getColumnModel(), name));
        table.getTableHeader().setReorderingAllowed(false);
        table.getAccessibleContext().setAccessibleName(name);
        table.putClientProperty("terminateEditOnFocusLost", Boolean.TRUE);
        return table;
    }

    /** Least widths of the columns, in pixels at the usual text size; they grow with what stands in them. */
    public static void widths(JTable table, int... widthsPx) {
        for (int i = 0; i < widthsPx.length && i < table.getColumnCount(); i++) {
            table.getColumnModel().getColumn(i).setPreferredWidth(Space.px(widthsPx[i]));
        }
    }

    /** Does something when a key is pressed in the table. @param stroke as {@link javax.swing.KeyStroke} reads it */
    public static void onKey(JTable table, String stroke, Runnable action) {
        KeyPress.on(table, stroke, action);
    }

    /** Columns stay as wide as what stands in them; where there is no room for all, the table scrolls sideways. */
    public static JScrollPane scrolling(JTable table) {
        return new TableScroll(table);
    }

    /** Numbers at the right. */
    public static TableCellRenderer numbers() {
        DefaultTableCellRenderer renderer = new DefaultTableCellRenderer();
        renderer.setHorizontalAlignment(SwingConstants.TRAILING);
        return renderer;
    }

    /** Cells with an icon beside their words. @param icon may give null; @param words is read aloud too */
    public static <V> TableCellRenderer cells(Class<V> type, Function<V, Icon> icon, Function<V, String> words) {
        return new DefaultTableCellRenderer() {
            private static final long serialVersionUID = 1L;

            @Override
            public Component getTableCellRendererComponent(
                    JTable table, Object value, boolean selected, boolean focused, int row, int column) {
                super.getTableCellRendererComponent(table, value, selected, focused, row, column);
                if (type.isInstance(value)) {
                    setIcon(icon.apply(type.cast(value)));
                    setText(words.apply(type.cast(value)));
                } else {
                    setIcon(null);
                }
                return this;
            }
        };
    }
}
