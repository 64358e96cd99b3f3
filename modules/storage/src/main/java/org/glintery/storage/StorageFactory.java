package org.glintery.storage;

import org.glintery.api.storage.Storage;
import org.glintery.api.workshop.ServiceFactory;
import org.glintery.api.workshop.Workshop;
import org.openide.util.lookup.ServiceProvider;

/** Brings storage to every workshop. */
@ServiceProvider(service = ServiceFactory.class)
public final class StorageFactory implements ServiceFactory<Storage> {

    @Override
    public Class<Storage> service() {
        return Storage.class;
    }

    @Override
    public Storage create(Workshop workshop) {
        return new ComputedStorage();
    }
}
