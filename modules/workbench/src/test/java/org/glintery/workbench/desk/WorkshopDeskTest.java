package org.glintery.workbench.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javax.swing.SwingUtilities;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Workshop;
import org.glintery.api.workshop.Workshops;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openide.util.Lookup;

class WorkshopDeskTest {
    private static final UUID PIECE = new UUID(4, 2);

    @TempDir
    Path folder;

    private final Workshops workshops = Lookup.getDefault().lookup(Workshops.class);

    private static final class Silent implements Speech {
        @Override
        public void say(String sentence) {}

        @Override
        public void warn(String sentence) {}

        @Override
        public void refuse(Refusal refusal) {}
    }

    private static Result<ChangeSet> shelve() {
        return Result.ok(ChangeSet.named("Shelve the rope-walk")
                .create(Piece.TYPE, PIECE, Piece.titled("Rope-walk", Standing.SHELVED))
                .build());
    }

    @Test
    void makesTheChangesThatWait_beforeItCloses() throws Exception {
        Workshop workshop = workshops.create(folder.resolve("shop")).orThrow();
        WorkshopDesk desk = new WorkshopDesk(workshop, Clock.systemUTC(), new Silent(), piece -> {});
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch goOn = new CountDownLatch(1);
        SwingUtilities.invokeAndWait(() -> {
            desk.change(
                    view -> {
                        begun.countDown();
                        await(goOn);
                        return Result.refused("nothing-to-change", "");
                    },
                    applied -> {});
            desk.change(view -> shelve(), applied -> {});
        });
        await(begun);
        Thread closing = new Thread(desk::close);
        closing.start();
        goOn.countDown();
        closing.join(TimeUnit.SECONDS.toMillis(30));

        try (Workshop again = workshops.open(folder.resolve("shop")).orThrow()) {
            assertThat(again.view().find(Piece.TYPE, PIECE)).isPresent();
        }
    }

    @Test
    void makesNoChange_afterItWasClosed() throws Exception {
        Workshop workshop = workshops.create(folder.resolve("shop")).orThrow();
        WorkshopDesk desk = new WorkshopDesk(workshop, Clock.systemUTC(), new Silent(), piece -> {});
        desk.close();
        SwingUtilities.invokeAndWait(() -> desk.change(view -> shelve(), applied -> {}));
        try (Workshop again = workshops.open(folder.resolve("shop")).orThrow()) {
            assertThat(again.view().find(Piece.TYPE, PIECE)).isEmpty();
        }
    }

    private static void await(CountDownLatch latch) {
        try {
            assertThat(latch.await(30, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }
}
