package org.glintery.charts;

import org.glintery.api.charts.Charts;
import org.glintery.api.workshop.ServiceFactory;
import org.glintery.api.workshop.Workshop;
import org.openide.util.lookup.ServiceProvider;

/** Brings charts to every workshop. */
@ServiceProvider(service = ServiceFactory.class)
public final class ChartsFactory implements ServiceFactory {

    @Override
    public Class<?> service() {
        return Charts.class;
    }

    @Override
    public Object create(Workshop workshop) {
        return new MakingCharts();
    }
}
