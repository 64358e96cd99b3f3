package org.glintery.storage;

import org.glintery.api.storage.Storage;
import org.glintery.api.workshop.ServiceFactory;
import org.glintery.api.workshop.Workshop;
import org.openide.util.lookup.ServiceProvider;

/** Brings storage to every workshop. */
@ServiceProvider(service = ServiceFactory.class)
public final class StorageFactory implements ServiceFactory {

    @Override
    public Class<?> service() {
        return Storage.class;
    }

    @Override
    public Object create(Workshop workshop) {
        return new ComputedStorage();
    }
}
