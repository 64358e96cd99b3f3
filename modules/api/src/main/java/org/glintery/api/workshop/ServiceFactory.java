package org.glintery.api.workshop;

import org.glintery.api.ExtensionPoint;
import org.glintery.api.Stable;

/**
 * Extension point: brings a service to every workshop. Register with {@code @ServiceProvider(service =
 * ServiceFactory.class)}. {@link #create} is called once a workshop, off the event thread, when the service
 * is first asked for.
 */
@Stable
@ExtensionPoint
public interface ServiceFactory {
    Class<?> service();

    Object create(Workshop workshop);
}
