package org.glintery.exchange.tables;

import org.glintery.api.exchange.TableFiles;
import org.glintery.api.workshop.ServiceFactory;
import org.glintery.api.workshop.Workshop;
import org.glintery.exchange.found.InstalledCodec;
import org.openide.util.lookup.ServiceProvider;

/** Brings tables to every workshop. */
@ServiceProvider(service = ServiceFactory.class)
public final class TableFilesFactory implements ServiceFactory<TableFiles> {
    @Override
    public Class<TableFiles> service() {
        return TableFiles.class;
    }

    @Override
    public TableFiles create(Workshop workshop) {
        return new ZippedTables(workshop, InstalledCodec.forUseBy("tables"));
    }
}
