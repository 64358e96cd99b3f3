package org.glintery.workbench.parts;

import static org.assertj.core.api.Assertions.assertThat;

import javax.swing.JComboBox;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;

class FormSheetTest {
    @Test
    void namesAField_byItsLabel() {
        JTextField field = new JTextField();
        new FormSheet().field("Where it is kept", field, "Such as a drawer");

        assertThat(field.getAccessibleContext().getAccessibleName()).isEqualTo("Where it is kept");
        assertThat(field.getAccessibleContext().getAccessibleDescription()).isEqualTo("Such as a drawer");
    }

    @Test
    void namesAChoiceToTypeIn_andItsField() {
        JComboBox<String> box = new JComboBox<>();
        box.setEditable(true);
        new FormSheet().field("Where it is kept", box);

        assertNamed(box);
        box.updateUI();
        assertNamed(box);
    }

    private static void assertNamed(JComboBox<String> box) {
        assertThat(box.getAccessibleContext().getAccessibleName()).isEqualTo("Where it is kept");
        assertThat(box.getEditor().getEditorComponent().getAccessibleContext().getAccessibleName())
                .isEqualTo("Where it is kept");
    }
}
