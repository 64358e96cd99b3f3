package org.glintery.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.LedgerAction;
import org.glintery.api.ledger.LedgerEntry;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Kit;
import org.glintery.api.time.About;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.LedgerQuery;
import org.glintery.api.workshop.Workshop;
import org.glintery.testkit.LedgerWork;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The database may lose what it was told last; the journal brings it back. */
class JournalTest {
    @TempDir
    Path temp;

    private final DayClock clock = new DayClock();
    private final H2Workshops workshops = new H2Workshops(clock, ChangeMaking.StepWatch.NONE);

    /** A folder as a killed process may leave it: the database of an earlier moment, the journal of now. */
    private Path left(Path earlierDatabase, String name) throws IOException {
        Path folder = Files.createDirectory(temp.resolve(name));
        Files.copy(earlierDatabase, folder.resolve(Database.FILE));
        Files.copy(temp.resolve("w").resolve(Journal.FILE), folder.resolve(Journal.FILE));
        Path pictures = temp.resolve("w").resolve(BlobFolder.NAME);
        if (Files.exists(pictures)) {
            Files.createDirectory(folder.resolve(BlobFolder.NAME));
            try (var files = Files.list(pictures)) {
                for (Path file : files.toList()) {
                    Files.copy(file, folder.resolve(BlobFolder.NAME).resolve(file.getFileName()));
                }
            }
        }
        return folder;
    }

    private Path databaseBefore() throws IOException {
        workshops.create(temp.resolve("w")).orThrow().close();
        return Files.copy(
                temp.resolve("w").resolve(Database.FILE),
                temp.resolve("earlier.mv.db"),
                StandardCopyOption.REPLACE_EXISTING);
    }

    private static void work(Workshop workshop, DayClock clock) {
        UUID kit = new UUID(1, 1);
        workshop.apply(ChangeSet.named("Shelve")
                        .create(Kit.TYPE, kit, Kit.titled("Ferry"))
                        .build())
                .orThrow();
        var old = workshop.view().find(Kit.TYPE, kit).orElseThrow();
        workshop.apply(ChangeSet.named("Rename")
                        .replace(Kit.TYPE, old, Kit.titled("Ferry Slip"))
                        .create(Kit.TYPE, new UUID(1, 2), Kit.titled("Crane"))
                        .blob(Blob.of("image/png", new byte[] {1, 2, 3}))
                        .post(new LedgerAction.Movement(
                                new UUID(2, 1),
                                LedgerWork.DRILLS.get(3),
                                Optional.of("lot 7"),
                                Spot.SUPPLIER,
                                LedgerWork.SPOTS.get(0),
                                Amount.rough(40, 3),
                                "bought — 'half price'",
                                About.edtf("2024-10~"),
                                Optional.empty()))
                        .build())
                .orThrow();
        workshop.apply(ChangeSet.named("Let go")
                        .remove(Kit.TYPE.ref(new UUID(1, 2)))
                        .build())
                .orThrow();
        var more = new LedgerWork(7);
        while (more.actions() < 200) {
            workshop.apply(more.next(clock.day()));
            if (more.oneIn(7)) {
                workshop.undo();
            }
            if (more.oneIn(14)) {
                workshop.redo();
            }
        }
    }

    @Test
    void bringsEverythingBack_whenTheDatabaseLostAllOfIt() throws IOException {
        Path earlier = databaseBefore();
        try (Workshop workshop = workshops.open(temp.resolve("w")).orThrow()) {
            work(workshop, clock);
            Path folder = left(earlier, "left");
            for (int time = 0; time < 2; time++) {
                try (Workshop again = workshops.open(folder).orThrow()) {
                    assertThat(again.view().contentDigest())
                            .isEqualTo(workshop.view().contentDigest());
                    assertThat(again.view().revision())
                            .isEqualTo(workshop.view().revision());
                    assertThat(entries(again)).isEqualTo(entries(workshop)).isNotEmpty();
                    assertThat(again.history(1_000)).isEqualTo(workshop.history(1_000));
                    assertThat(again.undoable()).isEqualTo(workshop.undoable());
                    assertThat(again.check().problems()).isEmpty();
                }
                assertThat(Files.size(folder.resolve(Journal.FILE)))
                        .as("once closed in order")
                        .isZero();
            }
        }
    }

    private static List<LedgerEntry> entries(Workshop of) {
        List<LedgerEntry> entries = new ArrayList<>();
        of.ledger(LedgerQuery.all(), entries::add);
        return entries;
    }

    /** H2's own writer would store some tables before a change and some after it, every half second. */
    @Test
    void letsNobodyButTheWriterThreadWriteTheDatabase() throws IOException {
        Path folder = temp.resolve("w");
        try (Workshop workshop = workshops.create(folder).orThrow()) {
            work(workshop, clock);
            String before = Blob.hash(Files.readAllBytes(folder.resolve(Database.FILE)));
            long start = System.nanoTime();
            int looks = 0;
            for (; System.nanoTime() - start < 1_500_000_000L; looks++) {
                assertThat(Blob.hash(Files.readAllBytes(folder.resolve(Database.FILE))))
                        .isEqualTo(before);
            }
            assertThat(looks).isGreaterThan(1);
        }
    }

    @Test
    void dropsARecordThatIsCutShortOrDamaged_andKeepsThoseBefore() throws IOException {
        Path earlier = databaseBefore();
        List<String> digests = new ArrayList<>();
        List<Long> ends = new ArrayList<>();
        Path folder;
        try (Workshop workshop = workshops.open(temp.resolve("w")).orThrow()) {
            for (int i = 0; i < 3; i++) {
                digests.add(workshop.view().contentDigest());
                ends.add(Files.size(temp.resolve("w").resolve(Journal.FILE)));
                workshop.apply(ChangeSet.named("Kit " + i)
                                .create(Kit.TYPE, new UUID(3, i), Kit.titled("Kit " + i))
                                .build())
                        .orThrow();
            }
            folder = left(earlier, "left");
        }
        byte[] journal = Files.readAllBytes(folder.resolve(Journal.FILE));
        int last = Math.toIntExact(ends.get(2));
        for (int length : List.of(last, last + 1, last + 8, last + 9, journal.length - 1)) {
            assertThat(opened(folder, earlier, Arrays.copyOf(journal, length)))
                    .as("cut to %d of %d bytes", length, journal.length)
                    .isEqualTo(digests.get(2));
        }
        byte[] damaged = journal.clone();
        damaged[last + 20] ^= 1;
        assertThat(opened(folder, earlier, damaged)).isEqualTo(digests.get(2));
        byte[] zeros = Arrays.copyOf(Arrays.copyOf(journal, last), last + 4_096);
        assertThat(opened(folder, earlier, zeros)).as("a tail of zeros").isEqualTo(digests.get(2));
    }

    @Test
    void refusesToOpen_andTouchesNothing_whenARecordBeforeTheLastIsDamaged_alsoInItsHead() throws IOException {
        Path earlier = databaseBefore();
        List<Long> ends = new ArrayList<>();
        Path folder;
        try (Workshop workshop = workshops.open(temp.resolve("w")).orThrow()) {
            for (int i = 0; i < 10; i++) {
                ends.add(Files.size(temp.resolve("w").resolve(Journal.FILE)));
                workshop.apply(ChangeSet.named("Kit " + i)
                                .create(Kit.TYPE, new UUID(3, i), Kit.titled("Kit " + i))
                                .build())
                        .orThrow();
            }
            folder = left(earlier, "left");
        }
        byte[] journal = Files.readAllBytes(folder.resolve(Journal.FILE));
        int third = Math.toIntExact(ends.get(3));
        for (int at : List.of(0, 3, 4, 20, third, third + 1, third + 5, third + 30)) {
            byte[] damaged = journal.clone();
            damaged[at] ^= 1;
            Files.copy(earlier, folder.resolve(Database.FILE), StandardCopyOption.REPLACE_EXISTING);
            Files.write(folder.resolve(Journal.FILE), damaged);
            assertThat(workshops.open(folder))
                    .as("byte %d of %d", at, journal.length)
                    .isInstanceOfSatisfying(
                            Result.Refused.class,
                            refused -> assertThat(refused.refusal().text())
                                    .startsWith("The file glintery.journal of this workshop is damaged"));
            assertThat(folder.resolve(Journal.FILE)).hasBinaryContent(damaged);
        }
        assertThat(opened(folder, earlier, journal)).as("the whole one").isNotEmpty();
    }

    private String opened(Path folder, Path database, byte[] journal) throws IOException {
        Files.copy(database, folder.resolve(Database.FILE), StandardCopyOption.REPLACE_EXISTING);
        Files.write(folder.resolve(Journal.FILE), journal);
        try (Workshop workshop = workshops.open(folder).orThrow()) {
            assertThat(workshop.check().problems()).isEmpty();
            return workshop.view().contentDigest();
        }
    }
}
