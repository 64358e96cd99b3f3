package org.glintery.workbench.menu;

import java.util.Optional;
import javax.swing.Action;
import javax.swing.SwingUtilities;
import org.glintery.api.workshop.Workshop;
import org.glintery.workbench.parts.OpenDesk;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.spi.Desk;

/** Undo or redo: its name tells what it would do, and it rests while there is nothing. Event thread. */
abstract class HistoryAction extends DeskAction {
    private static final long serialVersionUID = 1L;
    private transient Workshop.Registration changes;

    HistoryAction(String name, Pictogram icon) {
        super(name, icon);
        OpenDesk.get().listen(this::follow);
        follow(OpenDesk.get().current());
    }

    /** What it would do now; empty when there is nothing. */
    abstract Optional<String> sentence(Workshop workshop);

    abstract String name(Optional<String> sentence);

    private void follow(Optional<Desk> desk) {
        if (changes != null) {
            changes.close();
            changes = null;
        }
        desk.ifPresent(d -> changes =
                d.workshop().listen(changed -> SwingUtilities.invokeLater(() -> tell(sentence(d.workshop())))));
        tell(desk.flatMap(d -> sentence(d.workshop())));
    }

    private void tell(Optional<String> sentence) {
        putValue(Action.NAME, name(sentence));
        putValue(Action.SHORT_DESCRIPTION, name(sentence));
        setEnabled(sentence.isPresent());
    }
}
