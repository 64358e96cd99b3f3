package org.glintery.workbench.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Proxy;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javax.swing.SwingUtilities;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.workshop.Applied;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Workshop;
import org.glintery.workbench.TestView;
import org.junit.jupiter.api.Test;

class WorkshopDeskTest {
    private static final UUID PIECE = new UUID(4, 2);

    /** What the workshop was told, in order. */
    private final List<String> told = new CopyOnWriteArrayList<>();

    /** A workshop that only remembers: whatever else is asked of it fails. */
    private Workshop workshop() {
        return (Workshop) Proxy.newProxyInstance(
                Workshop.class.getClassLoader(), new Class<?>[] {Workshop.class}, (proxy, method, arguments) -> {
                    switch (method.getName()) {
                        case "view":
                            return new TestView(1);
                        case "apply":
                            ChangeSet change = (ChangeSet) arguments[0];
                            told.add(change.sentence());
                            return Result.ok(new Applied(change.id(), 2));
                        case "close":
                            told.add("closed");
                            return null;
                        default:
                            throw new UnsupportedOperationException(method.getName());
                    }
                });
    }

    private static final class Silent implements Speech {
        private final List<String> warned = new CopyOnWriteArrayList<>();
        private final List<String> refused = new CopyOnWriteArrayList<>();

        @Override
        public void say(String sentence) {}

        @Override
        public void warn(String sentence) {
            warned.add(sentence);
        }

        @Override
        public void goOn() {
            warned.clear();
        }

        @Override
        public void refuse(Refusal refusal) {
            refused.add(refusal.code());
        }
    }

    private static Result<ChangeSet> shelve() {
        return Result.ok(ChangeSet.named("Shelve the rope-walk")
                .create(Piece.TYPE, PIECE, Piece.titled("Rope-walk", Standing.SHELVED))
                .build());
    }

    @Test
    void saysAllThereIsToNoteTogether_untilSomethingElseIsDone() throws Exception {
        Silent speech = new Silent();
        WorkshopDesk desk = new WorkshopDesk(workshop(), Clock.systemUTC(), speech, piece -> {});
        CountDownLatch done = new CountDownLatch(2);
        List<List<String>> heard = new CopyOnWriteArrayList<>();
        SwingUtilities.invokeAndWait(() -> {
            desk.change(view -> Result.ok(shelve().orThrow(), List.of("One thing.", "Another.")), applied -> {
                heard.add(List.copyOf(speech.warned));
                done.countDown();
            });
            desk.change(view -> shelve(), applied -> {
                heard.add(List.copyOf(speech.warned));
                done.countDown();
            });
        });
        assertThat(done.await(30, TimeUnit.SECONDS)).isTrue();
        desk.close();

        assertThat(heard).containsExactly(List.of("One thing.\nAnother."), List.of());
    }

    @Test
    void makesTheChangesThatWait_beforeItCloses() throws Exception {
        WorkshopDesk desk = new WorkshopDesk(workshop(), Clock.systemUTC(), new Silent(), piece -> {});
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

        assertThat(told).containsExactly("Shelve the rope-walk", "closed");
    }

    @Test
    void makesNoChange_afterItWasClosed_andSaysSo() throws Exception {
        Silent speech = new Silent();
        WorkshopDesk desk = new WorkshopDesk(workshop(), Clock.systemUTC(), speech, piece -> {});
        desk.close();
        SwingUtilities.invokeAndWait(() -> desk.change(view -> shelve(), applied -> {}));
        assertThat(told).containsExactly("closed");
        assertThat(speech.refused).containsExactly("closed");
    }

    @Test
    void reckonsNothing_afterItWasClosed() throws Exception {
        WorkshopDesk desk = new WorkshopDesk(workshop(), Clock.systemUTC(), new Silent(), piece -> {});
        desk.close();
        List<Long> shown = new CopyOnWriteArrayList<>();
        SwingUtilities.invokeAndWait(() -> desk.compute(view -> view.revision(), shown::add));
        SwingUtilities.invokeAndWait(() -> {}); // what would have been shown
        assertThat(shown).isEmpty();
    }

    private static void await(CountDownLatch latch) {
        try {
            assertThat(latch.await(30, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }
}
