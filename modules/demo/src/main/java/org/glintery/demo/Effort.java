package org.glintery.demo;

import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import org.glintery.api.workshop.DemoWorkshop.Watch;

/** How far the painting is, told to who watches, and whether it shall stop. Safe for use by several threads. */
final class Effort {
    private final int all;
    private final Watch watch;
    private final AtomicInteger done = new AtomicInteger();
    private final AtomicBoolean left = new AtomicBoolean();

    Effort(int all, Watch watch) {
        this.all = all;
        this.watch = watch;
    }

    void oneMore() {
        if (!watch.reached((double) done.incrementAndGet() / all)) {
            left.set(true);
        }
    }

    boolean isLeft() {
        return left.get();
    }
}
