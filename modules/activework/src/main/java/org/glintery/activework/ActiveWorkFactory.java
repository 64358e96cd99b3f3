package org.glintery.activework;

import org.glintery.api.activework.ActiveWork;
import org.glintery.api.workshop.ServiceFactory;
import org.glintery.api.workshop.Workshop;
import org.openide.util.lookup.ServiceProvider;

/** Brings the bench to every workshop. */
@ServiceProvider(service = ServiceFactory.class)
public final class ActiveWorkFactory implements ServiceFactory<ActiveWork> {

    @Override
    public Class<ActiveWork> service() {
        return ActiveWork.class;
    }

    @Override
    public ActiveWork create(Workshop workshop) {
        return new ComputedActiveWork(workshop);
    }
}
