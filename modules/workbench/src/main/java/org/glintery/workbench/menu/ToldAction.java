package org.glintery.workbench.menu;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.Action;
import javax.swing.SwingUtilities;
import org.glintery.api.workshop.Workshop;
import org.glintery.workbench.desk.CurrentDesk;
import org.glintery.workbench.desk.WorkshopDesk;
import org.glintery.workbench.parts.OpenDesk;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.spi.Desk;

/** An action whose name tells what it would do now; it rests while there is nothing to do. Event thread. */
final class ToldAction extends PlainAction {
    private static final long serialVersionUID = 1L;
    private final String usual;
    private final transient Function<Workshop, Optional<String>> name;
    private transient Optional<Workshop.Registration> changes = Optional.empty();

    /** @param usual its name while it rests @param name its name now; quick */
    ToldAction(String usual, Pictogram icon, Function<Workshop, Optional<String>> name, Consumer<WorkshopDesk> act) {
        super(usual, icon, () -> CurrentDesk.get().desk().ifPresent(act));
        this.usual = usual;
        this.name = name;
        OpenDesk.get().listen(this::follow);
        follow(OpenDesk.get().current());
    }

    private void follow(Optional<Desk> desk) {
        changes.ifPresent(Workshop.Registration::close);
        changes = desk.map(Desk::workshop)
                .map(workshop ->
                        workshop.listen(changed -> SwingUtilities.invokeLater(() -> tell(name.apply(workshop)))));
        tell(desk.map(Desk::workshop).flatMap(name));
    }

    private void tell(Optional<String> now) {
        putValue(Action.NAME, now.orElse(usual));
        putValue(Action.SHORT_DESCRIPTION, now.orElse(usual));
        setEnabled(now.isPresent());
    }
}
