package org.glintery.workbench.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.junit.jupiter.api.Test;

class TurnsTest {
    private final Deque<Runnable> started = new ArrayDeque<>();
    private final Deque<Runnable> patience = new ArrayDeque<>();
    private final List<String> done = new ArrayList<>();
    private final Turns turns = new Turns(started::add, patience::add, 1);

    private void bring(String name) {
        turns.execute(() -> done.add(name));
    }

    @Test
    void runsOneAfterTheOther_inTheOrderTheyCame() {
        bring("Shelves");
        bring("Shortages");
        bring("Questions");
        assertThat(started).hasSize(1);
        started.remove().run();
        assertThat(started).hasSize(1);
        started.remove().run();
        started.remove().run();
        assertThat(done).containsExactly("Shelves", "Shortages", "Questions");
    }

    @Test
    void letsTheNextBegin_whenOneTakesTooLong() {
        bring("hangs");
        bring("Shelves");
        Runnable hanging = started.remove();
        patience.remove().run();
        started.remove().run();
        assertThat(done).containsExactly("Shelves");
        bring("Shortages");
        bring("Questions");
        hanging.run();
        assertThat(started).as("its end does not count twice").hasSize(1);
    }

    @Test
    void goesOn_whenThereWasNoThreadForOne() {
        var none = new ArrayDeque<Boolean>(List.of(true));
        var turnsShort = new Turns(
                work -> {
                    if (none.poll() != null) {
                        throw new OutOfMemoryError("planted");
                    }
                    started.add(work);
                },
                patience::add,
                1);
        assertThatThrownBy(() -> turnsShort.execute(() -> done.add("lost"))).hasMessage("planted");
        turnsShort.execute(() -> done.add("Shelves"));
        started.remove().run();
        assertThat(done).containsExactly("Shelves");
    }

    @Test
    void goesOn_whenOneThrows() {
        turns.execute(() -> {
            throw new IllegalStateException("planted");
        });
        bring("Shelves");
        assertThatThrownBy(started.remove()::run).hasMessage("planted");
        started.remove().run();
        assertThat(done).containsExactly("Shelves");
    }

    @Test
    void runsSeveralAtOnce_whereThereIsRoom() {
        Turns two = new Turns(started::add, patience::add, 2);
        two.execute(() -> done.add("a"));
        two.execute(() -> done.add("b"));
        two.execute(() -> done.add("c"));
        assertThat(started).hasSize(2);
    }
}
