package org.glintery.records;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.glintery.api.GlinteryException;
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
        List<ServiceFactory<?>> factories = new ArrayList<>();
        for (ServiceFactory<?> factory : Lookup.getDefault().lookupAll(ServiceFactory.class)) {
            if (factory.service() == service) {
                factories.add(factory);
            }
        }
        if (factories.size() > 1) {
            throw new GlinteryException(service.getName() + " is brought by more than one factory: "
                    + factories.stream().map(one -> one.getClass().getName()).collect(Collectors.joining(", ")));
        }
        return factories.stream().findFirst().map(factory -> service.cast(made(factory)));
    }

    /** A service is made off the event thread, even when that is who asks first. */
    private Object made(ServiceFactory<?> factory) {
        Supplier<Object> make = () -> made.get(factory, () -> factory.create(workshop));
        return !OffTheEventThread.isElsewhere()
                ? CompletableFuture.supplyAsync(make).join()
                : make.get();
    }
}
