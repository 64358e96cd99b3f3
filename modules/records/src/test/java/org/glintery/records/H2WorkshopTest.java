package org.glintery.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.LedgerAction;
import org.glintery.api.ledger.LedgerEntry;
import org.glintery.api.ledger.Shape;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Kit;
import org.glintery.api.workshop.Applied;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.LedgerQuery;
import org.glintery.api.workshop.Reservation;
import org.glintery.api.workshop.Workshop;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class H2WorkshopTest {
    private static final Drill RED = Drill.of(Shape.SQUARE, 250, "own", "red");
    private static final Spot BAG = new Spot.InBag(new UUID(7, 7));
    private static final Spot CANVAS = new Spot.OnCanvas(new UUID(8, 8));

    @TempDir
    Path temp;

    private final H2Workshops workshops = new H2Workshops();
    private Workshop workshop;

    @BeforeEach
    void make() {
        workshop = workshops.create(temp.resolve("w")).orThrow();
    }

    @AfterEach
    void close() {
        workshop.close();
    }

    private Result<Applied> move(Spot from, Spot to, long count) {
        return workshop.apply(ChangeSet.named("Move")
                .post(LedgerAction.Movement.of(UUID.randomUUID(), RED, from, to, Amount.counted(count), "moved"))
                .build());
    }

    private static String code(Result<?> result) {
        return result instanceof Result.Refused<?> refused ? refused.refusal().code() : "ok";
    }

    private void reopen() {
        workshop.close();
        workshop = workshops.open(temp.resolve("w")).orThrow();
    }

    @Test
    void keepsDocumentsMovementsAndPictures_afterReopening() {
        UUID id = UUID.randomUUID();
        Blob blob = Blob.of("image/png", new byte[] {1, 2, 3});
        workshop.apply(ChangeSet.named("Shelve")
                        .create(Kit.TYPE, id, Kit.titled("Rope-walk"))
                        .blob(blob)
                        .post(LedgerAction.Movement.of(
                                UUID.randomUUID(), RED, Spot.SUPPLIER, BAG, Amount.rough(200, 10), "bought"))
                        .build())
                .orThrow();
        String before = workshop.view().contentDigest();
        reopen();
        assertThat(workshop.view().contentDigest()).isEqualTo(before);
        assertThat(workshop.view().find(Kit.TYPE, id).orElseThrow().value().title())
                .isEqualTo("Rope-walk");
        assertThat(workshop.view().balance(BAG, RED)).isEqualTo(new Balance(200, 100, 0));
        assertThat(workshop.blob(blob.hash()).orElseThrow()).containsExactly(1, 2, 3);
        assertThat(workshop.check().problems()).isEmpty();
    }

    @Test
    void refusesAndChangesNothing_whenABagHoldsTooFew() {
        move(Spot.SUPPLIER, BAG, 10).orThrow();
        String before = workshop.view().contentDigest();
        assertThat(code(move(BAG, CANVAS, 11))).isEqualTo("not-enough");
        assertThat(workshop.view().contentDigest()).isEqualTo(before);
    }

    @Test
    void countsOnce_whenAMovementIsSaidAgain_andRefusesOtherContent() {
        UUID id = UUID.randomUUID();
        var movement = LedgerAction.Movement.of(id, RED, Spot.SUPPLIER, BAG, Amount.counted(5), "bought");
        workshop.apply(ChangeSet.named("a").post(movement).build()).orThrow();
        workshop.apply(ChangeSet.named("a").post(movement).build()).orThrow();
        var other = LedgerAction.Movement.of(id, RED, Spot.SUPPLIER, BAG, Amount.counted(6), "bought");
        assertThat(code(workshop.apply(ChangeSet.named("a").post(other).build())))
                .isEqualTo("id-reused");
        assertThat(workshop.view().balance(BAG, RED).count()).isEqualTo(5);
    }

    @Test
    void takesBackAndBringsBack_alsoAfterReopening() {
        move(Spot.SUPPLIER, BAG, 10).orThrow();
        String ten = workshop.view().contentDigest();
        UUID id = UUID.randomUUID();
        workshop.apply(ChangeSet.named("Lay four")
                        .create(Kit.TYPE, id, Kit.titled("K"))
                        .blob(Blob.of("image/png", new byte[] {9}))
                        .post(LedgerAction.Movement.of(UUID.randomUUID(), RED, BAG, CANVAS, Amount.rough(4, 2), "laid"))
                        .build())
                .orThrow();
        String laid = workshop.view().contentDigest();
        reopen();
        assertThat(workshop.undoable()).contains("Lay four");
        workshop.undo().orThrow();
        assertThat(workshop.view().contentDigest()).isEqualTo(ten);
        reopen();
        assertThat(workshop.redoable()).contains("Lay four");
        workshop.redo().orThrow();
        assertThat(workshop.view().contentDigest()).isEqualTo(laid);
        assertThat(workshop.view().find(Kit.TYPE, id)).isPresent();
        workshop.undo().orThrow();
        assertThat(workshop.view().contentDigest()).isEqualTo(ten);
    }

    @Test
    void takesBackAllTheWayToTheFirst() {
        Applied first = move(Spot.SUPPLIER, BAG, 10).orThrow();
        move(BAG, CANVAS, 10).orThrow();
        workshop.undo().orThrow();
        workshop.redo().orThrow();
        workshop.undo().orThrow();
        workshop.undo().orThrow();
        assertThat(workshop.view().balance(BAG, RED)).isEqualTo(Balance.ZERO);
        assertThat(code(workshop.undo())).isEqualTo("nothing-to-undo");
        assertThat(first.revision()).isEqualTo(1);
    }

    @Test
    void refusesToSetAsideMoreThanIsThere_andToTakeWhatIsSetAside() {
        move(Spot.SUPPLIER, BAG, 10).orThrow();
        UUID id = UUID.randomUUID();
        var tooMany = new Reservation(RED, 11, Reservation.FOR_PIECE, UUID.randomUUID(), Optional.empty());
        assertThat(code(workshop.apply(ChangeSet.named("r")
                        .create(Reservation.TYPE, id, tooMany)
                        .build())))
                .isEqualTo("not-available");
        var eight = new Reservation(RED, 8, Reservation.FOR_PIECE, UUID.randomUUID(), Optional.empty());
        workshop.apply(ChangeSet.named("r").create(Reservation.TYPE, id, eight).build())
                .orThrow();
        assertThat(code(move(BAG, CANVAS, 3))).isEqualTo("reserved");
        move(BAG, Spot.LOST, 3).orThrow();
        assertThat(workshop.view().available(RED)).isEqualTo(-1);
        assertThat(code(move(BAG, CANVAS, 1))).isEqualTo("reserved");
    }

    @Test
    void pinsAndTakesBackExactly_whenCounted() {
        move(Spot.SUPPLIER, BAG, 100).orThrow();
        workshop.apply(ChangeSet.named("some")
                        .post(LedgerAction.Movement.of(
                                UUID.randomUUID(), RED, Spot.SUPPLIER, BAG, Amount.unknown(), "gift"))
                        .build())
                .orThrow();
        Balance before = workshop.view().balance(BAG, RED);
        assertThat(before.uncounted()).isEqualTo(1);
        workshop.apply(ChangeSet.named("count")
                        .post(new LedgerAction.Stocktake(
                                UUID.randomUUID(),
                                RED,
                                BAG,
                                Amount.rough(130, 3),
                                "counted",
                                Optional.empty(),
                                Optional.empty()))
                        .build())
                .orThrow();
        assertThat(workshop.view().balance(BAG, RED)).isEqualTo(new Balance(130, 9, 0));
        workshop.undo().orThrow();
        assertThat(workshop.view().balance(BAG, RED)).isEqualTo(before);
    }

    @Test
    void exportsAndImportsToAnEqualWorkshop() {
        move(Spot.SUPPLIER, BAG, 10).orThrow();
        move(BAG, CANVAS, 4).orThrow();
        workshop.undo().orThrow();
        workshop.apply(ChangeSet.named("k")
                        .create(Kit.TYPE, UUID.randomUUID(), Kit.titled("Rope-walk"))
                        .blob(Blob.of("image/png", new byte[] {1, 2}))
                        .build())
                .orThrow();
        workshop.exportJson(temp.resolve("e.json")).orThrow();
        try (Workshop second = workshops.create(temp.resolve("w2")).orThrow()) {
            second.importJson(temp.resolve("e.json")).orThrow();
            assertThat(second.view().contentDigest()).isEqualTo(workshop.view().contentDigest());
            assertThat(actions(second)).isEqualTo(actions(workshop));
            assertThat(code(second.importJson(temp.resolve("e.json")))).isEqualTo("not-empty");
        }
    }

    private static List<LedgerAction> actions(Workshop of) {
        List<LedgerAction> actions = new ArrayList<>();
        of.ledger(LedgerQuery.all(), (LedgerEntry entry) -> actions.add(entry.action()));
        return actions;
    }

    @Test
    void restoresABackup_andLeavesNothing_whenItIsDamaged() throws Exception {
        move(Spot.SUPPLIER, BAG, 10).orThrow();
        workshop.apply(ChangeSet.named("k")
                        .blob(Blob.of("image/png", new byte[] {1, 2}))
                        .build())
                .orThrow();
        Path backup = temp.resolve("b.zip");
        workshop.backup(backup).orThrow();
        workshops.restore(backup, temp.resolve("r")).orThrow();
        try (Workshop restored = workshops.open(temp.resolve("r")).orThrow()) {
            assertThat(restored.view().contentDigest())
                    .isEqualTo(workshop.view().contentDigest());
        }
        byte[] bytes = Files.readAllBytes(backup);
        bytes[bytes.length / 2] ^= 1;
        Files.write(temp.resolve("bad.zip"), bytes);
        assertThat(code(workshops.restore(temp.resolve("bad.zip"), temp.resolve("r2"))))
                .isIn("damaged", "not-a-backup");
        assertThat(temp.resolve("r2")).doesNotExist();
        assertThat(code(workshops.restore(backup, temp.resolve("r")))).isEqualTo("not-empty");
    }

    @Test
    void remembersItsLastBackup_alsoAfterItWasClosed_andForgetsADamagedNote() throws Exception {
        assertThat(workshop.lastBackup()).isEmpty();
        String before = workshop.view().contentDigest();
        Path backup = temp.resolve("b.zip");
        workshop.backup(backup).orThrow();

        workshop.close();
        try (Workshop again = workshops.open(temp.resolve("w")).orThrow()) {
            assertThat(again.lastBackup().orElseThrow().file())
                    .isEqualTo(backup.toAbsolutePath().toString());
            assertThat(again.undoable()).isEmpty();
            assertThat(again.view().contentDigest()).isEqualTo(before);
            Files.writeString(temp.resolve("w").resolve(LastBackup.FILE), "at=yesterday");
            assertThat(again.lastBackup()).isEmpty();
        }
    }

    @Test
    void refusesASecondOpener_andNamesTheFirst() {
        Result<Workshop> second = workshops.open(temp.resolve("w"));
        assertThat(code(second)).isEqualTo("in-use");
        assertThat(((Result.Refused<Workshop>) second).refusal().text())
                .contains("process " + ProcessHandle.current().pid());
    }
}
