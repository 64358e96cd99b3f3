package org.glintery.workbench.parts;

import java.awt.Component;
import java.util.List;
import java.util.Vector;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.DefaultComboBoxModel;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import javax.swing.JList;
import org.glintery.api.Stable;

/** One of several values, shown by their words; null is a value too. Tells only what the user chooses. Event thread. */
@Stable
public final class ChoiceBox<E> extends JComboBox<E> {
    private static final long serialVersionUID = 1L;
    private boolean showing;

    public ChoiceBox(List<E> values, Function<E, String> words) {
        this(values, words, chosen -> {});
    }

    /** @param chosen called when the user chooses; not by {@link #show} */
    public ChoiceBox(List<E> values, Function<E, String> words, Consumer<E> chosen) {
        super(new Vector<>(values));
        setRenderer(new DefaultListCellRenderer() {
            private static final long serialVersionUID = 1L;

            @Override
            @SuppressWarnings("unchecked")
            public Component getListCellRendererComponent(
                    JList<?> list, Object value, int index, boolean selected, boolean focused) {
                boolean nothing = value == null && getItemCount() == 0;
                String shown = nothing ? "" : words.apply((E) value);
                return super.getListCellRendererComponent(list, shown, index, selected, focused);
            }
        });
        addActionListener(e -> {
            if (!showing) {
                chosen.accept(chosen());
            }
        });
    }

    /** What is chosen now. */
    @SuppressWarnings("unchecked")
    public E chosen() {
        return (E) getSelectedItem();
    }

    public void show(E value) {
        showing = true;
        setSelectedItem(value);
        showing = false;
    }

    /** Other values to choose from. */
    public void show(List<E> values, E value) {
        showing = true;
        setModel(new DefaultComboBoxModel<>(new Vector<>(values)));
        setSelectedItem(value);
        showing = false;
    }
}
