package org.glintery.workbench.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.EventQueue;
import java.util.stream.IntStream;
import javax.swing.JTable;
import javax.swing.table.DefaultTableModel;
import org.junit.jupiter.api.Test;

class TableScrollTest {
    private static final String LONG = "3 487 and some that nobody has counted yet";

    @Test
    void scrollsSideways_whereColumnsHaveNoRoom() throws Exception {
        TableScroll narrow = laidOut(260);

        assertThat(narrow.scrollsSideways()).isTrue();
        assertThat(table(narrow).getWidth()).isGreaterThan(260);
        assertNothingIsCut(table(narrow));
    }

    @Test
    void fillsTheWidth_whereThereIsRoom() throws Exception {
        TableScroll wide = laidOut(1200);

        assertThat(wide.scrollsSideways()).isFalse();
        assertThat(table(wide).getWidth()).isEqualTo(wide.getViewport().getWidth());
        assertNothingIsCut(table(wide));
    }

    @Test
    void widensAColumn_whenLongerWordsCome() throws Exception {
        TableScroll scroll = laidOut(600);
        ((DefaultTableModel) table(scroll).getModel()).setValueAt(LONG, 0, 0);
        EventQueue.invokeAndWait(() -> {});

        assertNothingIsCut(table(scroll));
    }

    private static void assertNothingIsCut(JTable table) {
        IntStream.range(0, table.getColumnCount())
                .forEach(column -> assertThat(table.getCellRect(0, column, false).width)
                        .as("column %d", column)
                        .isGreaterThanOrEqualTo(table.prepareRenderer(table.getCellRenderer(0, column), 0, column)
                                .getPreferredSize()
                                .width));
    }

    private static TableScroll laidOut(int widthPx) throws Exception {
        TableScroll[] made = new TableScroll[1];
        EventQueue.invokeAndWait(() -> {
            DefaultTableModel model = new DefaultTableModel(new Object[] {"Symbol", "At hand", "Note"}, 0);
            model.addRow(new Object[] {"A", LONG, "by the window"});
            made[0] = (TableScroll) Tables.scrolling(Tables.readable(new JTable(model), "lines"));
            made[0].setSize(widthPx, 200);
            made[0].addNotify();
            made[0].doLayout();
            made[0].getViewport().doLayout();
        });
        EventQueue.invokeAndWait(() -> made[0].getViewport().doLayout());
        return made[0];
    }

    private static JTable table(TableScroll scroll) {
        return (JTable) scroll.getViewport().getView();
    }
}
