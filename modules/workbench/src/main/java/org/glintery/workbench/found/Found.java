package org.glintery.workbench.found;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.glintery.api.GlinteryException;
import org.openide.util.Lookup;

/** What the modules that are switched on offer at this moment. Any thread. */
public final class Found {
    private Found() {}

    /** The one that must be there; its absence is a fault, named. */
    public static <T> T one(Class<T> service) {
        return maybe(service).orElseThrow(() -> new GlinteryException("no module offers a " + service.getSimpleName()));
    }

    public static <T> Optional<T> maybe(Class<T> service) {
        return Optional.ofNullable(offered().lookup(service));
    }

    public static <T> Collection<T> all(Class<T> service) {
        return List.copyOf(offered().lookupAll(service));
    }

    private static Lookup offered() {
        return Lookup.getDefault();
    }
}
