package org.glintery.exchange.tables;

import org.glintery.api.GlinteryException;
import org.glintery.api.JsonCodec;
import org.glintery.api.exchange.TableFiles;
import org.glintery.api.workshop.ServiceFactory;
import org.glintery.api.workshop.Workshop;
import org.openide.util.Lookup;
import org.openide.util.lookup.ServiceProvider;

/** Brings tables to every workshop. */
@ServiceProvider(service = ServiceFactory.class)
public final class TableFilesFactory implements ServiceFactory {
    @Override
    public Class<?> service() {
        return TableFiles.class;
    }

    @Override
    public Object create(Workshop workshop) {
        JsonCodec codec = Lookup.getDefault().lookup(JsonCodec.class);
        if (codec == null) {
            throw new GlinteryException("tables need a JsonCodec, and none is installed");
        }
        return new ZippedTables(workshop, codec);
    }
}
