package org.glintery.stash;

import org.glintery.api.stash.Stash;
import org.glintery.api.workshop.ServiceFactory;
import org.glintery.api.workshop.Workshop;
import org.openide.util.lookup.ServiceProvider;

/** Brings the stash to every workshop. */
@ServiceProvider(service = ServiceFactory.class)
public final class StashFactory implements ServiceFactory<Stash> {

    @Override
    public Class<Stash> service() {
        return Stash.class;
    }

    @Override
    public Stash create(Workshop workshop) {
        return new ComputedStash();
    }
}
