package org.glintery.exchange.legend;

import org.glintery.api.exchange.LegendReader;
import org.glintery.api.workshop.ServiceFactory;
import org.glintery.api.workshop.Workshop;
import org.openide.util.lookup.ServiceProvider;

/** Brings the reading of legends to every workshop. */
@ServiceProvider(service = ServiceFactory.class)
public final class LegendReading implements ServiceFactory<LegendReader> {
    @Override
    public Class<LegendReader> service() {
        return LegendReader.class;
    }

    @Override
    public LegendReader create(Workshop workshop) {
        return new CsvLegendReader();
    }
}
