package org.glintery.workbench.desk;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import org.glintery.api.workshop.Workshop.Registration;
import org.glintery.workbench.parts.OpenDesk;
import org.glintery.workbench.spi.Desk;
import org.openide.util.lookup.ServiceProvider;

/** Holds the desk of the workshop that is open. One window, one workshop. */
@ServiceProvider(service = OpenDesk.class)
public final class CurrentDesk implements OpenDesk {
    private final List<Consumer<Optional<Desk>>> listeners = new CopyOnWriteArrayList<>();
    private volatile Optional<WorkshopDesk> current = Optional.empty();

    /** The one of this application. */
    public static CurrentDesk get() {
        return (CurrentDesk) OpenDesk.get();
    }

    @Override
    public Optional<Desk> current() {
        return current.map(d -> d);
    }

    public Optional<WorkshopDesk> desk() {
        return current;
    }

    @Override
    public Registration listen(Consumer<Optional<Desk>> listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    /** Puts another desk in its place, or none, and gives back the old one, still open. Event thread. */
    public Optional<WorkshopDesk> put(Optional<WorkshopDesk> desk) {
        Optional<WorkshopDesk> old = take(desk);
        listeners.forEach(listener -> listener.accept(current()));
        return old;
    }

    /** Takes the desk away without a word, when the application ends. Any thread. */
    public Optional<WorkshopDesk> take(Optional<WorkshopDesk> instead) {
        Optional<WorkshopDesk> old = current;
        current = instead;
        return old;
    }
}
