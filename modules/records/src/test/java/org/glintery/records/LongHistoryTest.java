package org.glintery.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.stash.Kit;
import org.glintery.api.workshop.Applied;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Workshop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Undo reaches to the first change, and both directions are the same after a restart. */
class LongHistoryTest {
    private static final int CHANGES = 1_500;

    @TempDir
    Path temp;

    private final H2Workshops workshops = new H2Workshops();

    private static void shelve(Workshop workshop, String title) {
        workshop.apply(ChangeSet.named(title)
                        .create(Kit.TYPE, UUID.randomUUID(), Kit.titled(title))
                        .build())
                .orThrow();
    }

    @Test
    void takesBackAllThereEverWas_andBringsItBack_afterARestart() {
        Path folder = temp.resolve("long");
        String empty;
        String whole;
        try (Workshop workshop = workshops.create(folder).orThrow()) {
            empty = workshop.view().contentDigest();
            for (int i = 0; i < CHANGES; i++) {
                shelve(workshop, "Kit " + i);
            }
            whole = workshop.view().contentDigest();
        }
        try (Workshop workshop = workshops.open(folder).orThrow()) {
            for (int i = CHANGES - 1; i >= 0; i--) {
                assertThat(workshop.undoable()).contains("Kit " + i);
                workshop.undo().orThrow();
            }
            assertThat(workshop.undoable()).isEmpty();
            assertThat(workshop.view().contentDigest()).isEqualTo(empty);
        }
        try (Workshop workshop = workshops.open(folder).orThrow()) {
            assertThat(workshop.undoable()).isEmpty();
            for (int i = 0; i < CHANGES; i++) {
                assertThat(workshop.redoable()).contains("Kit " + i);
                workshop.redo().orThrow();
            }
            assertThat(workshop.redoable()).isEmpty();
            assertThat(workshop.view().contentDigest()).isEqualTo(whole);
        }
    }

    /** Against two plain stacks, with a restart now and then. */
    @Test
    void offersWhatTwoStacksWould_whateverIsDoneUndoneAndRedone() {
        long seed = 20_250;
        var random = new Random(seed);
        Path folder = temp.resolve("mixed");
        Deque<String> done = new ArrayDeque<>();
        Deque<String> undone = new ArrayDeque<>();
        Workshop workshop = workshops.create(folder).orThrow();
        try {
            for (int step = 0; step < 600; step++) {
                String where = "seed " + seed + ", step " + step;
                switch (random.nextInt(5)) {
                    case 0, 1 -> {
                        shelve(workshop, "Kit " + step);
                        done.push("Kit " + step);
                        undone.clear();
                    }
                    case 2, 3 -> move(workshop.undo(), done, undone, where);
                    default -> move(workshop.redo(), undone, done, where);
                }
                if (random.nextInt(20) == 0) {
                    workshop.close();
                    workshop = workshops.open(folder).orThrow();
                }
                assertThat(workshop.undoable()).as(where).isEqualTo(Optional.ofNullable(done.peek()));
                assertThat(workshop.redoable()).as(where).isEqualTo(Optional.ofNullable(undone.peek()));
            }
        } finally {
            workshop.close();
        }
    }

    private static void move(Result<Applied> result, Deque<String> from, Deque<String> to, String where) {
        assertThat(result instanceof Result.Ok<Applied>).as(where).isEqualTo(!from.isEmpty());
        if (!from.isEmpty()) {
            to.push(from.pop());
        }
    }
}
