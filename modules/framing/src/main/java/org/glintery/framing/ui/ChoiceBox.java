package org.glintery.framing.ui;

import java.awt.Component;
import java.util.List;
import java.util.Vector;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.DefaultComboBoxModel;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import javax.swing.JList;

/** One of several values, shown by their words. Tells only what the user chooses. Event thread. */
final class ChoiceBox<E> extends JComboBox<E> {

    private static final long serialVersionUID = 1L;

    private boolean showing;

    ChoiceBox(Class<E> type, List<E> values, Function<E, String> words, Consumer<E> chosen) {
        super(new Vector<>(values));
        setRenderer(new DefaultListCellRenderer() {
            private static final long serialVersionUID = 1L;

            @Override
            public Component getListCellRendererComponent(
                    JList<?> list, Object value, int index, boolean selected, boolean focused) {
                String shown = type.isInstance(value) ? words.apply(type.cast(value)) : "";
                return super.getListCellRendererComponent(list, shown, index, selected, focused);
            }
        });
        addActionListener(e -> {
            if (!showing && getSelectedItem() != null) {
                chosen.accept(type.cast(getSelectedItem()));
            }
        });
    }

    void show(E value) {
        showing = true;
        setSelectedItem(value);
        showing = false;
    }

    /** Other values to choose from. */
    void show(List<E> values, E value) {
        showing = true;
        setModel(new DefaultComboBoxModel<>(new Vector<>(values)));
        setSelectedItem(value);
        showing = false;
    }
}
