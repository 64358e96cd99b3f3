package org.glintery.testkit.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.EventQueue;
import java.util.UUID;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Changed;
import org.glintery.api.workshop.LedgerQuery;
import org.glintery.api.workshop.Workshop;
import org.junit.jupiter.api.Test;

/** The handle: news, threads, blobs and closing. */
abstract class HandleTests extends WorkshopContract.Part {
    private static final UUID ID = new UUID(13, 1);
    private static final int PATIENCE_S = 20;

    private record Heard(Changed changed, Thread thread) {}

    @Test
    void tellsOfChangesInOrder_onOneThreadThatIsNotTheCallers() throws InterruptedException {
        BlockingQueue<Heard> heard = new LinkedBlockingQueue<>();
        Workshop.Registration registration =
                workshop().listen(changed -> heard.add(new Heard(changed, Thread.currentThread())));
        for (int width = 1; width <= 3; width++) {
            apply(ChangeSet.named("put").put(Gauge.First.TYPE, ID, new Gauge.First(width)));
        }
        long revision = 0;
        Thread dispatcher = null;
        while (revision < 3) {
            Heard next = heard.poll(PATIENCE_S, TimeUnit.SECONDS);
            assertThat(next).as("news after revision %d", revision).isNotNull();
            assertThat(next.changed().revision()).isGreaterThan(revision);
            assertThat(next.changed().documents()).containsExactly(Gauge.First.TYPE.ref(ID));
            assertThat(next.changed().ledger()).isFalse();
            assertThat(next.thread()).isNotSameAs(Thread.currentThread());
            assertThat(dispatcher == null || dispatcher == next.thread()).isTrue();
            dispatcher = next.thread();
            revision = next.changed().revision();
        }
        registration.close();
        apply(ChangeSet.named("put").put(Gauge.First.TYPE, ID, new Gauge.First(9)));
        assertThat(heard.poll(100, TimeUnit.MILLISECONDS))
                .as("news after the end")
                .isNull();
    }

    @Test
    void hasChangedAlready_whenItTellsOfIt() throws InterruptedException {
        BlockingQueue<Long> seen = new LinkedBlockingQueue<>();
        workshop().listen(changed -> seen.add(view().revision() - changed.revision()));
        apply(ChangeSet.named("put").put(Gauge.First.TYPE, ID, new Gauge.First(1)));
        assertThat(seen.poll(PATIENCE_S, TimeUnit.SECONDS)).isNotNull().isNotNegative();
    }

    @Test
    void appliesInTheBackground_whatIsHandedOver() throws Exception {
        var change = ChangeSet.named("put")
                .put(Gauge.First.TYPE, ID, new Gauge.First(1))
                .build();
        var applied = workshop().submit(change).toCompletableFuture().get(PATIENCE_S, TimeUnit.SECONDS);
        assertThat(applied.orThrow().change()).isEqualTo(change.id());
        assertThat(view().find(Gauge.First.TYPE, ID)).isPresent();
    }

    @Test
    void keepsBlobsByTheirHash_andRefusesAWrongOne() {
        Blob blob = Blob.of("image/png", new byte[] {4, 5});
        apply(ChangeSet.named("a picture").blob(blob));
        assertThat(apply(ChangeSet.named("the same").blob(blob))).isEqualTo("ok");
        assertThat(view().blobs()).containsExactlyEntriesOf(java.util.Map.of(blob.hash(), "image/png"));
        assertThat(workshop().blob(blob.hash()).orElseThrow()).containsExactly(4, 5);
        assertThat(workshop().blob(Blob.hash(new byte[] {6}))).isEmpty();
        byte[] changedLater = {6};
        Blob wrong = Blob.of("image/png", changedLater);
        changedLater[0]++;
        assertThat(apply(ChangeSet.named("wrong").blob(wrong))).isEqualTo("malformed");
    }

    @Test
    void countsWhatItHolds_whenItIsChecked() {
        apply(ChangeSet.named("all")
                .put(Gauge.First.TYPE, ID, new Gauge.First(1))
                .blob(Blob.of("image/png", new byte[] {8})));
        assertThat(workshop().check()).isEqualTo(new Workshop.CheckReport(1, 0, 1, java.util.List.of()));
    }

    @Test
    void refusesDiskWorkOnTheEventThread() throws Exception {
        AtomicReference<Throwable> thrown = new AtomicReference<>();
        EventQueue.invokeAndWait(() -> thrown.set(org.assertj.core.api.Assertions.catchThrowable(
                () -> workshop().ledger(LedgerQuery.all(), entry -> {}))));
        assertThat(thrown.get()).isInstanceOf(IllegalStateException.class);
        EventQueue.invokeAndWait(() -> thrown.set(org.assertj.core.api.Assertions.catchThrowable(() -> workshop()
                .apply(ChangeSet.named("put")
                        .put(Gauge.First.TYPE, ID, new Gauge.First(1))
                        .build()))));
        assertThat(thrown.get()).isInstanceOf(IllegalStateException.class);
        assertThat(view().documents()).isEmpty();
    }

    @Test
    void refusesChanges_onceItIsClosed() {
        workshop().close();
        workshop().close();
        ChangeSet change = ChangeSet.named("late")
                .put(Gauge.First.TYPE, ID, new Gauge.First(1))
                .build();
        assertThat(code(workshop().apply(change))).isEqualTo("closed");
        assertThat(code(workshop().undo())).isEqualTo("closed");
    }
}
