package org.glintery.workbench.desk;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicBoolean;

/** Work that takes a while and can be left: told in the foot of the window. Any thread. */
public final class LongWork implements AutoCloseable {
    private static final List<Runnable> LISTENERS = new CopyOnWriteArrayList<>();
    private static volatile Optional<LongWork> current = Optional.empty();

    private final String name;
    private final boolean canBeLeft;
    private final AtomicBoolean left = new AtomicBoolean();
    private volatile double share;

    /** @param canBeLeft whether {@link #isLeft} is asked now and then */
    public static LongWork begin(String name, boolean canBeLeft) {
        LongWork work = new LongWork(name, canBeLeft);
        current = Optional.of(work);
        tell();
        return work;
    }

    private LongWork(String name, boolean canBeLeft) {
        this.name = name;
        this.canBeLeft = canBeLeft;
    }

    /** What is under way, if anything is. */
    static Optional<LongWork> current() {
        return current;
    }

    static void listen(Runnable listener) {
        LISTENERS.add(listener);
    }

    String name() {
        return name;
    }

    boolean canBeLeft() {
        return canBeLeft && !left.get();
    }

    /** From 0 to 1; 0 while it can't be told. */
    double share() {
        return share;
    }

    void leave() {
        left.set(true);
        tell();
    }

    /** Whether the user wants it to stop. */
    public boolean isLeft() {
        return left.get();
    }

    /** @param newShare how much of it is done, from 0 to 1 */
    public void reach(double newShare) {
        share = newShare;
        tell();
    }

    @Override
    public void close() {
        if (current.filter(work -> work == this).isPresent()) {
            current = Optional.empty();
            tell();
        }
    }

    private static void tell() {
        LISTENERS.forEach(Runnable::run);
    }
}
