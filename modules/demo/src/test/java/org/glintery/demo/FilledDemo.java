package org.glintery.demo;

import java.nio.file.Path;
import org.glintery.api.workshop.Workshop;
import org.glintery.api.workshop.Workshops;
import org.openide.util.Lookup;

/** Demo workshops on disk, for tests. */
final class FilledDemo {
    static final long SEED = 1;

    private FilledDemo() {}

    static Workshop empty(Path folder) {
        return Lookup.getDefault().lookup(Workshops.class).create(folder).orThrow();
    }

    static Workshop filled(Path folder, long seed) {
        Workshop workshop = empty(folder);
        new DemoFilling().fill(workshop, seed).orThrow();
        return workshop;
    }
}
