package org.glintery.activework;

import org.glintery.api.activework.ActiveWork;
import org.glintery.api.workshop.ServiceFactory;
import org.glintery.api.workshop.Workshop;
import org.openide.util.lookup.ServiceProvider;

/** Brings the bench to every workshop. */
@ServiceProvider(service = ServiceFactory.class)
public final class ActiveWorkFactory implements ServiceFactory {

    @Override
    public Class<?> service() {
        return ActiveWork.class;
    }

    @Override
    public Object create(Workshop workshop) {
        return new ComputedActiveWork(workshop);
    }
}
