package org.glintery.finishes;

import org.glintery.api.finishes.Finishes;
import org.glintery.api.workshop.ServiceFactory;
import org.glintery.api.workshop.Workshop;
import org.openide.util.lookup.ServiceProvider;

/** Brings the finishes to every workshop. */
@ServiceProvider(service = ServiceFactory.class)
public final class FinishesFactory implements ServiceFactory {

    @Override
    public Class<?> service() {
        return Finishes.class;
    }

    @Override
    public Object create(Workshop workshop) {
        return new ComputedFinishes();
    }
}
