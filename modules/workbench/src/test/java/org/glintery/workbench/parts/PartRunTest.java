package org.glintery.workbench.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import javax.swing.JComponent;
import org.glintery.api.workshop.View;
import org.glintery.workbench.TestView;
import org.glintery.workbench.spi.ScreenPart;
import org.junit.jupiter.api.Test;

class PartRunTest {
    private final Deque<Runnable> background = new ArrayDeque<>();
    private final BlockingQueue<Runnable> eventThread = new LinkedBlockingQueue<>();
    private final List<String> told = new ArrayList<>();
    private final List<Throwable> aside = new ArrayList<>();
    private long revision = 1;

    @Test
    void showsOnceMore_whenRefreshedTwiceWhileItPrepares() throws Exception {
        PartRun<String> run = run(new Part(), 60_000);

        run.refresh();
        run.refresh();
        revision = 2;
        run.refresh();
        assertThat(background).hasSize(1);
        background.remove().run();
        deliver();
        assertThat(background).hasSize(1);
        background.remove().run();
        deliver();

        assertThat(told).containsExactly("shown 2", "shown 2");
        assertThat(background).isEmpty();
    }

    @Test
    void setsAside_aPartThatThrows_untilItIsTakenBack() throws Exception {
        Part part = new Part();
        part.fails = true;
        PartRun<String> run = run(part, 60_000);

        run.refresh();
        background.remove().run();
        deliver();
        run.refresh();

        assertThat(aside).singleElement().isInstanceOf(IllegalStateException.class);
        assertThat(background).isEmpty();

        part.fails = false;
        run.takeBack();
        background.remove().run();
        deliver();
        assertThat(told).containsExactly("shown 1");
    }

    @Test
    void setsAside_aPartThatIsTooSlow_untilItComesAfterAll() throws Exception {
        Part part = new Part();
        part.hanging = Optional.of(new CountDownLatch(1));
        PartRun<String> run = run(part, 1);

        run.refresh();
        Thread preparing = new Thread(background.remove());
        preparing.start();
        deliver();
        assertThat(aside).singleElement().matches(PartRun::tookTooLong);
        assertThat(told).isEmpty();

        part.hanging.get().countDown();
        preparing.join();
        deliver();
        assertThat(told).as("late, but better than never").containsExactly("back", "shown 1");
    }

    @Test
    void staysAside_whenItWasStoppedWhileItPrepared() throws Exception {
        PartRun<String> run = run(new Part(), 60_000);
        run.refresh();
        run.stop();
        background.remove().run();
        deliver();
        assertThat(told).isEmpty();
        assertThat(aside).as("its host told already").isEmpty();
    }

    private PartRun<String> run(Part part, long deadlineMs) {
        return new PartRun<>(
                part,
                () -> new TestView(revision),
                background::add,
                eventThread::add,
                deadlineMs,
                () -> false,
                aside::add,
                () -> told.add("back"));
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private void deliver() throws InterruptedException {
        Runnable next = eventThread.poll(10, TimeUnit.SECONDS);
        assertThat(next).as("something for the event thread").isNotNull();
        next.run();
    }

    private final class Part implements ScreenPart<String> {
        private boolean fails;
        private Optional<CountDownLatch> hanging = Optional.empty();

        @Override
        public String prepare(View view) {
            hanging.ifPresent(PartRunTest::await);
            if (fails) {
                throw new IllegalStateException("on purpose");
            }
            return "shown " + view.revision();
        }

        @Override
        public JComponent component() {
            throw new UnsupportedOperationException();
        }

        @Override
        public void show(String model) {
            told.add(model);
        }
    }
}
