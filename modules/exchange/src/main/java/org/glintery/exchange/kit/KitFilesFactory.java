package org.glintery.exchange.kit;

import org.glintery.api.exchange.KitFiles;
import org.glintery.api.workshop.ServiceFactory;
import org.glintery.api.workshop.Workshop;
import org.glintery.exchange.found.InstalledCodec;
import org.openide.util.lookup.ServiceProvider;

/** Brings kit files to every workshop. */
@ServiceProvider(service = ServiceFactory.class)
public final class KitFilesFactory implements ServiceFactory<KitFiles> {
    @Override
    public Class<KitFiles> service() {
        return KitFiles.class;
    }

    @Override
    public KitFiles create(Workshop workshop) {
        return new JsonKitFiles(workshop, InstalledCodec.forUseBy("kit files"));
    }
}
