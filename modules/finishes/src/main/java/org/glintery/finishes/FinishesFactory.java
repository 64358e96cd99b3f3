package org.glintery.finishes;

import org.glintery.api.finishes.Finishes;
import org.glintery.api.workshop.ServiceFactory;
import org.glintery.api.workshop.Workshop;
import org.openide.util.lookup.ServiceProvider;

/** Brings the finishes to every workshop. */
@ServiceProvider(service = ServiceFactory.class)
public final class FinishesFactory implements ServiceFactory<Finishes> {

    @Override
    public Class<Finishes> service() {
        return Finishes.class;
    }

    @Override
    public Finishes create(Workshop workshop) {
        return new ComputedFinishes();
    }
}
