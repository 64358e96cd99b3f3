package org.glintery.finishes.ui;

import java.awt.BorderLayout;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.BiConsumer;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import org.glintery.api.finishes.Finish;
import org.glintery.api.finishes.Finish.Field;
import org.glintery.finishes.FinishFields;
import org.glintery.workbench.parts.Columns;
import org.glintery.workbench.parts.Space;

/** The fields with nothing in them, each with a box to leave it for later. Event thread. */
final class LaterBoxes extends JPanel {

    private static final long serialVersionUID = 1L;

    private static final int MOST_COLUMNS = 3;
    private static final int COLUMN_PX = 170;
    private final Map<Field, JCheckBox> boxes = new EnumMap<>(Field.class);

    /** @param leave called with a field and whether it is left for later from now on */
    LaterBoxes(BiConsumer<Field, Boolean> leave) {
        super(new BorderLayout());
        setOpaque(false);
        Columns columns = new Columns(MOST_COLUMNS, COLUMN_PX, Space.TIGHT);
        add(columns);
        for (Field field : Field.values()) {
            JCheckBox box = new JCheckBox(FieldWords.of(field));
            box.setOpaque(false);
            box.addActionListener(e -> leave.accept(field, box.isSelected()));
            boxes.put(field, box);
            columns.one(box);
        }
    }

    void show(Finish finish) {
        boxes.forEach((field, box) -> {
            box.setVisible(!FinishFields.isFilled(finish, field));
            box.setSelected(finish.later().contains(field));
        });
        revalidate();
    }
}
