package org.glintery.charts.design;

import org.glintery.api.activework.ActiveWork;
import org.glintery.api.charts.Designs;
import org.glintery.api.stash.Stash;
import org.glintery.api.workshop.ServiceFactory;
import org.glintery.api.workshop.Workshop;
import org.openide.util.lookup.ServiceProvider;

/** Brings kept charts to every workshop. */
@ServiceProvider(service = ServiceFactory.class)
public final class DesignsFactory implements ServiceFactory<Designs> {

    @Override
    public Class<Designs> service() {
        return Designs.class;
    }

    @Override
    public Designs create(Workshop workshop) {
        return new KeptDesigns(workshop.find(Stash.class), workshop.find(ActiveWork.class));
    }
}
