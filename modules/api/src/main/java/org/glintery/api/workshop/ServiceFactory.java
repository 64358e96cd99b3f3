package org.glintery.api.workshop;

import org.glintery.api.ExtensionPoint;
import org.glintery.api.Stable;

/**
 * Extension point: brings a service to every workshop. Register with {@code @ServiceProvider(service =
 * ServiceFactory.class)}. {@link #create} is called once a workshop, off the event thread, when the service
 * is first asked for. Two factories for one service are a mistake: asking for it then fails and names both.
 */
@Stable
@ExtensionPoint
public interface ServiceFactory<S> {
    /** What it is asked for by: an interface, or a class of the module's own. Any thread; no work. */
    Class<S> service();

    /** Makes the service of one workshop. A background thread; it may ask the workshop for other services. */
    S create(Workshop workshop);
}
