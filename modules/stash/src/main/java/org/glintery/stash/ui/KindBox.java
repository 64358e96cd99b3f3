package org.glintery.stash.ui;

import java.awt.Component;
import java.util.Locale;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import javax.swing.JList;
import org.glintery.api.ledger.Coating;
import org.openide.util.NbBundle.Messages;

/** A choice between kinds of drills, in trade words. Event thread. */
final class KindBox<E extends Enum<E>> extends JComboBox<E> {

    private static final long serialVersionUID = 1L;

    KindBox(E[] kinds) {
        super(kinds);
        setRenderer(new DefaultListCellRenderer() {
            private static final long serialVersionUID = 1L;

            @Override
            public Component getListCellRendererComponent(
                    JList<?> list, Object value, int index, boolean selected, boolean focused) {
                return super.getListCellRendererComponent(list, word((Enum<?>) value), index, selected, focused);
            }
        });
    }

    @Messages("KindBox.ab=AB")
    private static String word(Enum<?> kind) {
        return kind == Coating.AB ? Bundle.KindBox_ab() : kind.name().toLowerCase(Locale.ROOT);
    }
}
