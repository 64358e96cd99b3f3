package org.glintery.framing;

import org.glintery.api.framing.Framing;
import org.glintery.api.workshop.ServiceFactory;
import org.glintery.api.workshop.Workshop;
import org.openide.util.lookup.ServiceProvider;

/** Brings framing to every workshop. */
@ServiceProvider(service = ServiceFactory.class)
public final class FramingFactory implements ServiceFactory<Framing> {

    @Override
    public Class<Framing> service() {
        return Framing.class;
    }

    @Override
    public Framing create(Workshop workshop) {
        return new ComputedFraming();
    }
}
