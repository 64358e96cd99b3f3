package org.glintery.storage.ui;

import java.awt.GraphicsEnvironment;
import java.util.List;
import javax.swing.JTable;
import javax.swing.table.DefaultTableModel;
import org.glintery.api.ledger.Drill;
import org.glintery.api.storage.KitUp;
import org.glintery.api.storage.Storage.Step;
import org.glintery.api.workshop.View;
import org.glintery.workbench.parts.DrillLook;
import org.glintery.workbench.parts.DrillSwatch;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Tables;
import org.openide.util.NbBundle.Messages;

/** A plan as rows to read before it is done. Event thread. */
final class PlanTable {

    private static final int HEIGHT_PX = 320;
    private static final int LEAST_HEIGHT_PX = 140;
    /** What a dialog with a plan has above and below it. */
    private static final int ROUND_IT_PX = 300;

    private static final int SWATCH_PX = 20;
    private static final int SWATCH_COLUMN_PX = 36;

    private final DefaultTableModel model;
    private final JTable table;

    private PlanTable(String name, String... headings) {
        model = new DefaultTableModel(headings, 0);
        table = Tables.readable(new JTable(model), name);
        table.setDefaultEditor(Object.class, null);
        var swatch = table.getColumnModel().getColumn(0);
        swatch.setMaxWidth(Space.px(SWATCH_COLUMN_PX));
        swatch.setCellRenderer(Tables.cells(DrillLook.class, look -> DrillSwatch.icon(look, SWATCH_PX), look -> ""));
    }

    @Messages({
        "PlanTable.symbol=Symbol",
        "PlanTable.drill=Drill",
        "PlanTable.where=Where",
        "PlanTable.amount=Amount",
        "PlanTable.from=From",
        "PlanTable.to=To",
        "PlanTable.name=The plan"
    })
    static PlanTable forKitUp() {
        return new PlanTable(
                Bundle.PlanTable_name(),
                "",
                Bundle.PlanTable_symbol(),
                Bundle.PlanTable_drill(),
                Bundle.PlanTable_where());
    }

    static PlanTable forKitDown() {
        PlanTable table = new PlanTable(
                Bundle.PlanTable_name(),
                "",
                Bundle.PlanTable_drill(),
                Bundle.PlanTable_amount(),
                Bundle.PlanTable_from(),
                Bundle.PlanTable_to());
        table.share(SWATCH_COLUMN_PX, 110, 80, 210, 380);
        return table;
    }

    /** @param widthsPx of the columns, in proportion */
    private void share(int... widthsPx) {
        for (int column = 0; column < widthsPx.length; column++) {
            table.getColumnModel().getColumn(column).setPreferredWidth(Space.px(widthsPx[column]));
        }
    }

    /** As high as reads well, lower on a low screen. */
    static int heightPx() {
        int room = GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds().height;
        return Math.max(Space.px(LEAST_HEIGHT_PX), Math.min(Space.px(HEIGHT_PX), room - Space.px(ROUND_IT_PX)));
    }

    JTable table() {
        return table;
    }

    void clear() {
        model.setRowCount(0);
    }

    /** @param names of the places, also of bags that the plan is going to make */
    void showSeats(View view, List<KitUp.Seat> seats, PlannedNames names) {
        clear();
        for (KitUp.Seat seat : seats) {
            model.addRow(new Object[] {
                DrillLook.of(view, seat.drill()), seat.symbol(), name(seat.drill()), names.words(seat.spot())
            });
        }
    }

    /** @param names of the places, also of bags that the plan is going to make */
    void showSteps(View view, List<Step> steps, PlannedNames names) {
        clear();
        for (Step step : steps) {
            model.addRow(new Object[] {
                DrillLook.of(view, step.drill()),
                name(step.drill()),
                step.amount().words(),
                names.words(step.from()),
                names.words(step.to())
            });
        }
    }

    private static String name(Drill drill) {
        return drill.card() + " " + drill.code();
    }
}
