package org.glintery.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.LedgerAction;
import org.glintery.api.ledger.Spot;
import org.glintery.api.workshop.Applied;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Workshop;
import org.glintery.testkit.LedgerWork;
import org.glintery.testkit.LeftOut;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A disk that is full: a small one in memory. */
class DiskFullTest {
    private static final Set<String> CODES = Set.of("disk-full", "disk", "closed");

    @TempDir
    Path temp;

    private final H2Workshops workshops = new H2Workshops();
    private Path disk;
    private boolean mounted;

    @BeforeEach
    void mount() throws Exception {
        disk = Files.createDirectory(temp.resolve("disk"));
        mounted = run("mount", "-t", "tmpfs", "-o", "size=6m", "none", disk.toString()) == 0;
        LeftOut.unless(mounted, "the right to mount a small disk, as root has it");
    }

    @AfterEach
    void unmount() throws Exception {
        if (mounted) {
            assertThat(run("umount", disk.toString())).isZero();
        }
    }

    private static int run(String... command) throws IOException, InterruptedException {
        return new ProcessBuilder(command).redirectErrorStream(true).start().waitFor();
    }

    private void fill() throws IOException {
        Path ballast = disk.resolve("ballast");
        assertThatThrownBy(() -> {
                    try (OutputStream out = Files.newOutputStream(ballast)) {
                        for (byte[] some = new byte[4_096]; ; ) {
                            out.write(some);
                        }
                    }
                })
                .as("the disk is full")
                .isInstanceOf(IOException.class);
    }

    private static Result<Applied> buy(Workshop workshop, int count) {
        return workshop.apply(ChangeSet.named("Buy")
                .post(LedgerAction.Movement.of(
                        UUID.randomUUID(),
                        LedgerWork.DRILLS.get(0),
                        Spot.SUPPLIER,
                        LedgerWork.SPOTS.get(0),
                        Amount.counted(count),
                        "bought"))
                .build());
    }

    private static void buyOneByOne(Workshop workshop, int drills) {
        for (int i = 0; i < drills; i++) {
            buy(workshop, 1).orThrow();
        }
    }

    private static void assertHolds(Workshop workshop, int drills) {
        assertThat(workshop.view()
                        .balance(LedgerWork.SPOTS.get(0), LedgerWork.DRILLS.get(0))
                        .count())
                .isEqualTo(drills);
        assertThat(workshop.check().problems()).isEmpty();
    }

    private static String code(Result<?> result) {
        return result instanceof Result.Refused<?> refused ? refused.refusal().code() : "ok";
    }

    @Test
    void keepsWhatWasAcknowledgedAndNothingElse() throws IOException {
        int acknowledged = 20;
        try (Workshop workshop = workshops.create(disk.resolve("w")).orThrow()) {
            buyOneByOne(workshop, acknowledged);
            fill();
            String last = "ok";
            for (int i = 0; i < 2_000 && last.equals("ok"); i++) {
                String before = workshop.view().contentDigest();
                last = code(buy(workshop, 1));
                if (last.equals("ok")) {
                    acknowledged++;
                } else {
                    assertThat(workshop.view().contentDigest()).isEqualTo(before);
                }
            }
            assertThat(last).isIn(CODES);
            byte[] picture = new byte[100_000];
            assertThat(code(workshop.apply(ChangeSet.named("Picture")
                            .blob(Blob.of("image/png", picture))
                            .build())))
                    .isIn(CODES);
            assertThat(code(workshop.backup(disk.resolve("backup.zip")))).isIn(CODES);
            assertThat(disk.resolve("backup.zip")).doesNotExist();
            Files.delete(disk.resolve("ballast"));
        }
        try (Workshop workshop = workshops.open(disk.resolve("w")).orThrow()) {
            assertHolds(workshop, acknowledged);
            buy(workshop, 1).orThrow();
        }
    }

    @Test
    void losesNothing_whenItIsClosedWhileTheDiskIsFull() throws IOException {
        int acknowledged = 300;
        try (Workshop workshop = workshops.create(disk.resolve("w")).orThrow()) {
            buyOneByOne(workshop, acknowledged);
            fill();
        }
        assertThat(disk.resolve("w").resolve(Journal.FILE))
                .as("what answers for the changes until the database can")
                .isNotEmptyFile();
        Files.delete(disk.resolve("ballast"));
        try (Workshop workshop = workshops.open(disk.resolve("w")).orThrow()) {
            assertHolds(workshop, acknowledged);
        }
    }

    @Test
    void takesInNothing_whenAnImportFillsTheDisk() throws IOException {
        Path export = temp.resolve("large.json");
        try (Workshop large = workshops.create(temp.resolve("large")).orThrow()) {
            byte[] picture = new byte[1 << 20];
            for (int i = 0; i < 8; i++) {
                picture[0] = (byte) i;
                large.apply(ChangeSet.named("Picture")
                                .blob(Blob.of("image/png", picture.clone()))
                                .build())
                        .orThrow();
            }
            large.exportJson(export).orThrow();
        }
        try (Workshop small = workshops.create(disk.resolve("w")).orThrow()) {
            assertThat(code(small.importJson(export))).isEqualTo("disk-full");
            assertThat(small.view().blobs()).isEmpty();
            assertThat(disk.resolve("w").resolve(BlobFolder.NAME)).isEmptyDirectory();
        }
    }

    @Test
    void makesNoHalfWorkshop() throws IOException {
        fill();
        assertThat(code(workshops.create(disk.resolve("w")))).isIn("disk-full", "disk", "unreadable");
        assertThat(disk.resolve("w")).doesNotExist();
    }
}
