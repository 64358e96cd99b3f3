package org.glintery.exchange.kit;

import org.glintery.api.GlinteryException;
import org.glintery.api.JsonCodec;
import org.glintery.api.exchange.KitFiles;
import org.glintery.api.workshop.ServiceFactory;
import org.glintery.api.workshop.Workshop;
import org.openide.util.Lookup;
import org.openide.util.lookup.ServiceProvider;

/** Brings kit files to every workshop. */
@ServiceProvider(service = ServiceFactory.class)
public final class KitFilesFactory implements ServiceFactory {
    @Override
    public Class<?> service() {
        return KitFiles.class;
    }

    @Override
    public Object create(Workshop workshop) {
        JsonCodec codec = Lookup.getDefault().lookup(JsonCodec.class);
        if (codec == null) {
            throw new GlinteryException("kit files need a JsonCodec, and none is installed");
        }
        return new JsonKitFiles(workshop, codec);
    }
}
