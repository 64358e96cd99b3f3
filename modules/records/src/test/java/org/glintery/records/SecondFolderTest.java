package org.glintery.records;

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
import java.util.UUID;
import java.util.stream.Stream;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.disk.SecondFolder;
import org.glintery.api.disk.SecondFolder.Made;
import org.glintery.api.disk.SecondFolder.Occasion;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Workshop;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A real workshop, copied into a second folder as the days go by. */
class SecondFolderTest {
    @TempDir
    Path temp;

    private Instant now = Instant.parse("2026-01-30T19:00:00Z");
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
    private final H2Workshops workshops = new H2Workshops();
    private Workshop workshop;
    private Path stick;
    private SecondFolder second;

    @BeforeEach
    void make() throws IOException {
        workshop = workshops.create(temp.resolve("Ferry-town")).orThrow();
        stick = Files.createDirectory(temp.resolve("stick"));
        second = new SecondFolder(stick, workshop, clock);
        shelve();
    }

    @AfterEach
    void close() {
        workshop.close();
    }

    private void shelve() {
        workshop.apply(ChangeSet.named("Shelve a piece")
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

    private static Refusal refusal(Result<?> result) {
        return ((Result.Refused<?>) result).refusal();
    }

    @Test
    void copiesWhatCanBeRestored_namedAfterTheWorkshopAndTheDay() throws Exception {
        assertThat(second.last()).isEmpty();
        assertThat(second.isDue(Occasion.OPENED)).isTrue();

        Made made = second.copy().orThrow();

        assertThat(onTheStick()).containsExactly("Ferry-town-copy-2026-01-30.zip");
        assertThat(second.last())
                .contains(new SecondFolder.Last(now, made.report().file()));
        Path again = temp.resolve("again");
        workshops.restore(made.report().file(), again).orThrow();
        try (Workshop restored = workshops.open(again).orThrow()) {
            assertThat(restored.view().contentDigest())
                    .isEqualTo(workshop.view().contentDigest());
            assertThat(new SecondFolder(stick, restored, clock).last())
                    .as("a workshop that was restored made none of these")
                    .isEmpty();
        }
    }

    @Test
    void isDue_onlyWhenSomethingChangedAndADayOrAWeekWentBy() {
        second.copy().orThrow();
        passDays(30);
        assertThat(second.isDue(Occasion.CLOSING)).as("nothing changed").isFalse();
        shelve();
        assertThat(second.isDue(Occasion.CLOSING)).isTrue();
        assertThat(second.isDue(Occasion.OPENED)).isTrue();

        second.copy().orThrow();
        shelve();
        assertThat(second.isDue(Occasion.CLOSING)).as("copied today").isFalse();
        passDays(1);
        assertThat(second.isDue(Occasion.CLOSING)).isTrue();
        assertThat(second.isDue(Occasion.OPENED)).as("copied yesterday").isFalse();
    }

    @Test
    void remembersAcrossClosing_andPerFolder() throws Exception {
        second.copy().orThrow();
        workshop.close();
        workshop = workshops.open(temp.resolve("Ferry-town")).orThrow();
        passDays(8);

        assertThat(new SecondFolder(stick, workshop, clock).isBehind()).isFalse();
        Path other = Files.createDirectory(temp.resolve("other"));
        assertThat(new SecondFolder(other, workshop, clock).isDue(Occasion.OPENED))
                .isTrue();
    }

    @Test
    void isBehind_whenTheLastCopyWasTakenAway_butNotWhenTheFolderIsNotThere() throws Exception {
        Path copy = second.copy().orThrow().report().file();
        Files.move(copy, temp.resolve("elsewhere.zip"));
        assertThat(second.isBehind()).isTrue();
        Files.delete(stick);
        assertThat(second.isBehind()).isFalse();
    }

    @Test
    void keepsTenAndOneAMonth_andTouchesNothingElse() throws Exception {
        Path namesake = temp.resolve("x").resolve("Ferry-town");
        try (Workshop other = workshops.create(namesake).orThrow()) {
            new SecondFolder(stick, other, clock).copy().orThrow();
        }
        Files.writeString(stick.resolve("Ferry-town-copy-2020-01-01.zip"), "somebody else's");
        Files.writeString(stick.resolve("Ferry-town-2026-01-30-1900.zip"), "made by hand");

        int removed = 0;
        for (int day = 0; day < 14; day++) {
            removed += second.copy().orThrow().removed().size();
            passDays(1);
        }

        assertThat(onTheStick())
                .contains(
                        "Ferry-town-2026-01-30-1900.zip",
                        "Ferry-town-copy-2020-01-01.zip",
                        "Ferry-town-copy-2026-01-30.zip", // of the other workshop
                        "Ferry-town-copy-2026-01-31.zip",
                        "Ferry-town-copy-2026-02-03.zip",
                        "Ferry-town-copy-2026-02-12.zip")
                .doesNotContain(
                        "Ferry-town-copy-2026-01-30-2.zip",
                        "Ferry-town-copy-2026-02-01.zip",
                        "Ferry-town-copy-2026-02-02.zip")
                .hasSize(14);
        assertThat(removed).isEqualTo(3);
    }

    @Test
    void refusesAFolderInsideTheWorkshops_alsoByAnotherWay() throws Exception {
        Path inside = Files.createDirectory(workshop.folder().resolve("copies"));
        Path link = Files.createSymbolicLink(temp.resolve("link"), inside);
        for (Path folder : List.of(inside, workshop.folder(), link, stick.resolve("../Ferry-town/copies"))) {
            SecondFolder refused = new SecondFolder(folder, workshop, clock);
            assertThat(refused.objection().orElseThrow().text())
                    .startsWith("The folder ")
                    .contains(" lies inside the workshop's own folder");
            assertThat(refusal(refused.copy()).code()).isEqualTo("inside-workshop");
        }
        assertThat(inside).isEmptyDirectory();
        assertThat(new SecondFolder(temp, workshop, clock).objection())
                .as("a folder that holds the workshop's")
                .isEmpty();
    }

    @Test
    void saysThatTheFolderWasNotFound_andWhenItWasCopiedLast() throws Exception {
        Path away = stick.resolveSibling("away");
        Files.move(stick, away);
        assertThat(refusal(second.copy()).text())
                .isEqualTo("The folder " + stick
                        + " was not found, so nothing was copied. Nothing was copied there before.");
        Files.move(away, stick);
        second.copy().orThrow();
        Files.move(stick, away);
        assertThat(refusal(second.copy()).text())
                .isEqualTo("The folder " + stick
                        + " was not found, so nothing was copied. Last copied on 30 January 2026.");
    }

    @Test
    void startsAgain_whenWhatItRememberedIsDamaged() throws Exception {
        second.copy().orThrow();
        for (String damaged : List.of("at\\:" + stick + "=yesterday", "\\uZZZZ")) {
            Files.writeString(workshop.folder().resolve("copies.properties"), damaged);
            assertThat(second.isDue(Occasion.CLOSING)).isTrue();
            second.copy().orThrow();
        }
        assertThat(onTheStick()).hasSize(3);
    }

    @Test
    void changesNothingInTheWorkshop() {
        long revision = workshop.view().revision();
        second.copy().orThrow();
        assertThat(workshop.view().revision()).isEqualTo(revision);
        assertThat(workshop.check().problems()).isEmpty();
    }
}
