package org.glintery.stopwatch;

import java.awt.Component;
import java.awt.Container;
import java.awt.event.ActionEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JList;
import javax.swing.JTextField;
import javax.swing.text.DefaultEditorKit;
import org.openide.windows.TopComponent;
import org.openide.windows.WindowManager;

/** The window Shelves as it stands on the screen: its search field and its list of pieces. Event thread. */
final class ShelvesWindow {

    private final JTextField search;
    private final JList<?> pieces;

    private ShelvesWindow(JTextField search, JList<?> pieces) {
        this.search = search;
        this.pieces = pieces;
    }

    /** The window once it shows what is in the workshop: its pieces, or that there are none. */
    static Optional<ShelvesWindow> ready() {
        TopComponent window = WindowManager.getDefault().findTopComponent("ShelvesWindow");
        if (window == null || !window.isShowing()) {
            return Optional.empty();
        }
        List<JTextField> fields = all(window, JTextField.class);
        List<JList<?>> lists = new ArrayList<>();
        all(window, JList.class).forEach(lists::add);
        if (fields.isEmpty() || lists.isEmpty()) {
            return Optional.empty(); // no workshop is open yet
        }
        var found = new ShelvesWindow(fields.get(0), lists.get(lists.size() - 1));
        boolean shown = found.pieces.isShowing()
                ? found.rows() > 0
                : all(window, AbstractButton.class).stream().anyMatch(Component::isShowing);
        return shown ? Optional.of(found) : Optional.empty();
    }

    int rows() {
        return pieces.getModel().getSize();
    }

    /** What the platform does for a key that is typed into a field. */
    void type(char key) {
        search.getKeymap()
                .getDefaultAction()
                .actionPerformed(new ActionEvent(search, ActionEvent.ACTION_PERFORMED, String.valueOf(key)));
    }

    /** As by selecting all and pressing Delete. */
    void clear() {
        search.selectAll();
        search.getActionMap()
                .get(DefaultEditorKit.deletePrevCharAction)
                .actionPerformed(new ActionEvent(search, ActionEvent.ACTION_PERFORMED, ""));
    }

    /** Paints the rows that can be seen, now. */
    void paintRows() {
        pieces.paintImmediately(pieces.getVisibleRect());
    }

    /** Calls back whenever the list shows other rows. */
    void whenUpdated(Runnable updated) {
        pieces.addPropertyChangeListener("model", change -> updated.run());
    }

    private static <C> List<C> all(Container in, Class<C> type) {
        List<C> found = new ArrayList<>();
        for (Component child : in.getComponents()) {
            if (type.isInstance(child)) {
                found.add(type.cast(child));
            }
            if (child instanceof Container container) {
                found.addAll(all(container, type));
            }
        }
        return found;
    }
}
