package org.glintery.finishes.ui;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.BiConsumer;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.finishes.Finish;
import org.glintery.api.finishes.Finish.Field;
import org.glintery.finishes.FinishFields;
import org.glintery.workbench.parts.Space;

/** The fields with nothing in them, each with a box to leave it for later. Event thread. */
final class LaterBoxes extends JPanel {

    private static final long serialVersionUID = 1L;

    private final Map<Field, JCheckBox> boxes = new EnumMap<>(Field.class);

    /** @param leave called with a field and whether it is left for later from now on */
    LaterBoxes(BiConsumer<Field, Boolean> leave) {
        super(new MigLayout("insets 0, fillx, wrap 3, hidemode 3, gapy " + Space.TIGHT, "[grow, fill, sg]"));
        setOpaque(false);
        for (Field field : Field.values()) {
            JCheckBox box = new JCheckBox(FieldWords.of(field));
            box.setOpaque(false);
            box.addActionListener(e -> leave.accept(field, box.isSelected()));
            boxes.put(field, box);
            add(box, "wmin 0");
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
