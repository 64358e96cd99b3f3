package org.glintery.testkit;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.openide.util.Lookup;

/** What the modules on the test's class path bring. Any thread. */
final class Installed {
    private Installed() {}

    static <S> Optional<S> one(Class<S> service) {
        return all(service).stream().findFirst();
    }

    static <S> Collection<S> all(Class<S> service) {
        return List.copyOf(Lookup.getDefault().lookupAll(service));
    }
}
