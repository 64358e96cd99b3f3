package org.glintery.workbench.shelves;

import java.awt.Component;
import java.util.List;
import java.util.function.Function;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import javax.swing.JList;

/** A choice between values that are shown in words; null is "not said". Event thread. */
final class WordsBox<T> extends JComboBox<T> {
    private static final long serialVersionUID = 1L;

    WordsBox(List<T> values, Function<T, String> words) {
        values.forEach(this::addItem);
        setRenderer(new DefaultListCellRenderer() {
            private static final long serialVersionUID = 1L;

            @Override
            @SuppressWarnings("unchecked")
            public Component getListCellRendererComponent(
                    JList<?> list, Object value, int index, boolean selected, boolean focused) {
                return super.getListCellRendererComponent(list, words.apply((T) value), index, selected, focused);
            }
        });
    }
}
