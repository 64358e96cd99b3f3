package org.glintery.workbench.copies;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.swing.SwingUtilities;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Workshop;
import org.glintery.api.workshop.Workshops;
import org.glintery.workbench.desk.Speech;
import org.glintery.workbench.desk.WorkshopDesk;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openide.util.Lookup;

/** A real workshop that is opened, changed and closed at a desk as the days go by. */
class FolderCopyingTest {
    @TempDir
    Path temp;

    private final Workshops workshops = Lookup.getDefault().lookup(Workshops.class);
    private final KeptInMemory preferences = new KeptInMemory();
    private final List<String> refused = new CopyOnWriteArrayList<>();
    private final List<String> said = new CopyOnWriteArrayList<>();
    private final AtomicBoolean windowShows = new AtomicBoolean(true);
    private Instant now = Instant.parse("2026-01-30T19:00:00Z");
    private Path folder;
    private Path stick;
    private WorkshopDesk desk;
    private FolderCopying copying;

    private final Clock clock = new Clock() {
        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now;
        }
    };

    private final Speech speech = new Speech() {
        @Override
        public void say(String sentence) {
            said.add(sentence);
        }

        @Override
        public void warn(String sentence) {
            refused.add(sentence);
        }

        @Override
        public void goOn() {}

        @Override
        public void refuse(Refusal refusal) {
            refused.add(refusal.text());
        }
    };

    @BeforeEach
    void make() throws Exception {
        folder = temp.resolve("Ferry-town");
        stick = Files.createDirectory(temp.resolve("stick"));
        workshops.create(folder).orThrow().close();
        open();
        shelve();
    }

    @AfterEach
    void closeAtLast() {
        desk.close();
    }

    private void open() throws Exception {
        Workshop workshop = workshops.open(folder).orThrow();
        desk = new WorkshopDesk(workshop, clock, speech, piece -> {});
        copying = new FolderCopying(desk, new ChosenFolder(preferences, folder), windowShows::get);
        desk.beforeClosing(copying::beforeClosing);
        ask(FolderCopying::afterOpening);
    }

    private void close() throws Exception {
        desk.close();
        SwingUtilities.invokeAndWait(() -> {}); // until what it gave to the event thread is told
    }

    private void shelve() {
        desk.workshop()
                .apply(ChangeSet.named("Shelve a piece")
                        .create(Piece.TYPE, UUID.randomUUID(), Piece.titled("Rope-walk", Standing.SHELVED))
                        .build())
                .orThrow();
    }

    private void passDays(int days) {
        now = now.plus(Duration.ofDays(days));
    }

    private List<String> onTheStick() throws IOException {
        try (Stream<Path> files = Files.list(stick)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    /** Asks on the event thread and waits until it was told what came of it. */
    private void ask(Function<FolderCopying, CompletableFuture<Void>> asked) throws Exception {
        CompletableFuture<Void> told = new CompletableFuture<>();
        SwingUtilities.invokeAndWait(() -> asked.apply(copying).thenRun(() -> told.complete(null)));
        told.get(30, TimeUnit.SECONDS);
    }

    @Test
    void copiesNothing_whileNoFolderIsChosen() throws Exception {
        passDays(60);
        close();
        open();
        assertThat(copying.standing()).isEmpty();
        assertThat(onTheStick()).isEmpty();
        assertThat(folder.resolve("copies.properties")).doesNotExist();
    }

    @Test
    void copiesAtOnceWhenChosen_thenAtClosing_onceADayAndOnlyWhatChanged() throws Exception {
        ask(c -> c.choose(stick));
        assertThat(onTheStick()).containsExactly("Ferry-town-copy-2026-01-30.zip");
        assertThat(said)
                .contains("Copied into " + stick + ". From now on that is done by itself when something changed.");

        shelve();
        close();
        assertThat(onTheStick()).as("copied today already").hasSize(1);

        passDays(1);
        open();
        assertThat(onTheStick()).as("a week has not gone by").hasSize(1);
        close();
        assertThat(onTheStick()).containsExactly("Ferry-town-copy-2026-01-30.zip", "Ferry-town-copy-2026-01-31.zip");

        passDays(9);
        open();
        close();
        assertThat(onTheStick()).as("nothing changed").hasSize(2);
        assertThat(refused).isEmpty();
    }

    @Test
    void copiesAfterOpening_whatWasNotCopiedForAWeek() throws Exception {
        ask(c -> c.choose(stick));
        shelve();
        close();
        passDays(8);
        open();
        assertThat(onTheStick()).containsExactly("Ferry-town-copy-2026-01-30.zip", "Ferry-town-copy-2026-02-07.zip");
        assertThat(copying.standing().orElseThrow().lastCopied()).contains(now);
    }

    @Test
    void makesTheCopyOfTheLastChange_beforeItCloses() throws Exception {
        ask(c -> c.choose(stick));
        passDays(1);
        SwingUtilities.invokeAndWait(() -> desk.change(
                view -> Result.ok(ChangeSet.named("Shelve the last")
                        .create(Piece.TYPE, UUID.randomUUID(), Piece.titled("Net loft", Standing.SHELVED))
                        .build()),
                applied -> {}));
        close();
        Path restored = temp.resolve("restored");
        workshops
                .restore(stick.resolve("Ferry-town-copy-2026-01-31.zip"), restored)
                .orThrow();
        try (Workshop again = workshops.open(restored).orThrow()) {
            assertThat(again.view().all(Piece.TYPE).stream()
                            .map(piece -> piece.value().title()))
                    .contains("Net loft");
        }
    }

    @Test
    void tellsOnceThatTheFolderIsNotThere_andShowsItUntilACopyWasMade() throws Exception {
        ask(c -> c.choose(stick));
        shelve();
        Path away = Files.move(stick, temp.resolve("away"));
        passDays(1);
        windowShows.set(false); // the application ends
        close();
        String sentence =
                "The folder " + stick + " was not found, so nothing was copied. Last copied on 30 January 2026.";
        assertThat(refused).isEmpty();

        windowShows.set(true);
        open();
        assertThat(refused).containsExactly(sentence);
        assertThat(copying.standing().orElseThrow().trouble()).contains(sentence);

        passDays(10);
        close();
        open();
        assertThat(refused).as("told once").containsExactly(sentence);

        ask(FolderCopying::copyNow);
        assertThat(refused).as("told again to who asks").containsExactly(sentence, sentence);

        Files.move(away, stick);
        ask(FolderCopying::copyNow);
        assertThat(copying.standing().orElseThrow().trouble()).isEmpty();
        assertThat(onTheStick()).hasSize(2);
    }

    @Test
    void choosesNoFolderInsideTheWorkshop_andKeepsTheOneItHas() throws Exception {
        ask(c -> c.choose(stick));
        ask(c -> c.choose(folder.resolve("nowhere")));
        ask(c -> c.choose(folder));
        assertThat(refused).hasSize(2);
        assertThat(refused.get(1)).contains("lies inside the workshop's own folder");
        assertThat(copying.standing().orElseThrow().folder()).isEqualTo(stick);
    }

    @Test
    void stops_andLeavesTheCopiesThere() throws Exception {
        ask(c -> c.choose(stick));
        SwingUtilities.invokeAndWait(copying::stop);
        shelve();
        passDays(40);
        close();
        assertThat(copying.standing()).isEqualTo(Optional.empty());
        assertThat(onTheStick()).hasSize(1);
    }

    @Test
    void knowsNothingOfTheFolder_onAnotherComputerOrInAnotherPlace() throws Exception {
        ask(c -> c.choose(stick));
        assertThat(new ChosenFolder(new KeptInMemory(), folder).folder()).isEmpty();
        assertThat(new ChosenFolder(preferences, temp.resolve("moved").resolve("Ferry-town")).folder())
                .isEmpty();
        assertThat(new ChosenFolder(preferences, folder).folder()).contains(stick);
    }

    @Test
    void copiesNothingAnyMore_onceItIsClosed() throws Exception {
        ask(c -> c.choose(stick));
        close();
        Files.delete(stick.resolve("Ferry-town-copy-2026-01-30.zip"));
        SwingUtilities.invokeAndWait(
                () -> assertThat(desk.whileOpen(() -> true)).isEmpty());
        assertThat(onTheStick()).isEmpty();
    }
}
