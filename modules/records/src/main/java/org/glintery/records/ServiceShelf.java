package org.glintery.records;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import org.glintery.api.OffTheEventThread;
import org.glintery.api.workshop.ServiceFactory;
import org.glintery.api.workshop.Workshop;
import org.openide.util.Lookup;

/** The features' services of one workshop, each made when first asked for. Any thread. */
final class ServiceShelf {
    private final Workshop workshop;
    private final OnceMap made = new OnceMap();

    ServiceShelf(Workshop workshop) {
        this.workshop = workshop;
    }

    <S> Optional<S> find(Class<S> service) {
        for (ServiceFactory factory : Lookup.getDefault().lookupAll(ServiceFactory.class)) {
            if (factory.service() == service) {
                return Optional.of(service.cast(made(factory)));
            }
        }
        return Optional.empty();
    }

    /** A service is made off the event thread, even when that is who asks first. */
    private Object made(ServiceFactory factory) {
        Supplier<Object> make = () -> made.get(factory, () -> factory.create(workshop));
        return !OffTheEventThread.isElsewhere()
                ? CompletableFuture.supplyAsync(make).join()
                : make.get();
    }
}
