package org.glintery.addon.sample;

import org.glintery.api.workshop.ServiceFactory;
import org.glintery.api.workshop.Workshop;
import org.openide.util.lookup.ServiceProvider;

/** Brings the care book to every workshop. */
@ServiceProvider(service = ServiceFactory.class)
public final class CareBookFactory implements ServiceFactory<CareBook> {

    @Override
    public Class<CareBook> service() {
        return CareBook.class;
    }

    @Override
    public CareBook create(Workshop workshop) {
        return new CareBook();
    }
}
