package org.glintery.finishes.ui;

import java.awt.Component;
import java.util.function.Consumer;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import javax.swing.JList;
import org.glintery.api.finishes.Finish.Sealing;

/** Sealed, not sealed, or not said. Event thread. */
final class SealingBox extends JComboBox<Sealing> {

    private static final long serialVersionUID = 1L;

    private boolean showing;

    SealingBox(Consumer<Sealing> chosen) {
        super(Sealing.values());
        setRenderer(new DefaultListCellRenderer() {
            private static final long serialVersionUID = 1L;

            @Override
            public Component getListCellRendererComponent(
                    JList<?> list, Object value, int index, boolean selected, boolean focused) {
                return super.getListCellRendererComponent(
                        list, FieldWords.of((Sealing) value), index, selected, focused);
            }
        });
        addActionListener(e -> {
            if (!showing) {
                chosen.accept((Sealing) getSelectedItem());
            }
        });
    }

    void show(Sealing sealing) {
        showing = true;
        setSelectedItem(sealing);
        showing = false;
    }
}
