package org.glintery.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.UUID;
import java.util.concurrent.CompletionStage;
import org.glintery.api.GlinteryException;
import org.glintery.api.Result;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.LedgerAction;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Kit;
import org.glintery.api.workshop.Applied;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.LedgerQuery;
import org.glintery.api.workshop.View;
import org.glintery.api.workshop.Workshop;
import org.glintery.testkit.LedgerWork;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Documents can be seen as soon as a workshop is open; what needs the ledger waits for it, or says that it is damaged. */
class LedgerReadingTest {
    private static final UUID KIT = new UUID(6, 1);
    private static final Spot BAG = LedgerWork.SPOTS.get(0);
    private final H2Workshops workshops = new H2Workshops();

    @TempDir
    Path temp;

    private Path folder;

    @BeforeEach
    void make() {
        folder = temp.resolve("w");
        try (Workshop workshop = workshops.create(folder).orThrow()) {
            workshop.apply(ChangeSet.named("Shelve")
                            .create(Kit.TYPE, KIT, Kit.titled("Net loft"))
                            .build())
                    .orThrow();
            workshop.apply(bought(1)).orThrow();
        }
    }

    private static ChangeSet bought(int count) {
        return ChangeSet.named("Buy " + count)
                .post(LedgerAction.Movement.of(
                        UUID.randomUUID(),
                        LedgerWork.DRILLS.get(0),
                        Spot.SUPPLIER,
                        BAG,
                        Amount.counted(count),
                        "bought"))
                .build();
    }

    private void damage(String statement) throws SQLException {
        Database database = Database.open(folder);
        try (Connection connection = database.connection();
                Statement sql = connection.createStatement()) {
            assertThat(sql.executeUpdate(statement)).isEqualTo(1);
            database.commit();
            database.close();
        }
    }

    @Test
    void givesBalancesAndTakesChanges_asSoonAsTheWorkshopIsOpen() {
        try (Workshop workshop = workshops.open(folder).orThrow()) {
            assertThat(workshop.undoable()).contains("Buy 1");
            assertThat(workshop.view().balance(BAG, LedgerWork.DRILLS.get(0)).count())
                    .isEqualTo(1);
            workshop.apply(bought(2)).orThrow();
            assertThat(workshop.view().balance(BAG, LedgerWork.DRILLS.get(0)).count())
                    .isEqualTo(3);
        }
    }

    @Test
    void showsDocumentsAndRefusesChanges_whenTheLedgerIsDamaged() throws SQLException {
        damage("update movement set to_spot = 9999");
        try (Workshop workshop = workshops.open(folder).orThrow()) {
            assertThat(workshop.view().find(Kit.TYPE, KIT)).isPresent();
            assertThatThrownBy(() -> workshop.view().balance(BAG, LedgerWork.DRILLS.get(0)))
                    .isInstanceOf(GlinteryException.class)
                    .hasMessage("the ledger could not be read");
            assertThat(workshop.apply(bought(2)))
                    .isInstanceOfSatisfying(
                            Result.Refused.class,
                            refused -> assertThat(refused.refusal().text())
                                    .isEqualTo("What was booked in this workshop can't be read, so nothing more can be"
                                            + " kept in it. Nothing was changed; restore a backup into a new folder."));
            Result<Applied> undone = workshop.undo();
            assertThat(undone).isInstanceOf(Result.Refused.class);
            assertThat(workshop.check().problems())
                    .containsExactly("What was booked can't be read. Restore a backup into a new folder.");
        }
    }

    @Test
    @Timeout(30)
    void saysThatTheWorkshopIsClosed_whenTheLedgerWasNotNeededBefore() {
        View view;
        try (Workshop workshop = workshops.open(folder).orThrow()) {
            view = workshop.view();
        }
        for (int again = 0; again < 2; again++) {
            assertThatThrownBy(view::spots).hasMessage("the workshop was closed");
        }
        assertThat(view.find(Kit.TYPE, KIT)).isPresent();
    }

    @Test
    void makesAChangeThatWaits_whenItIsClosedMeanwhile() {
        CompletionStage<Result<Applied>> waiting;
        try (Workshop workshop = workshops.open(folder).orThrow()) {
            waiting = workshop.submit(bought(2));
        }
        assertThat(waiting.toCompletableFuture().join()).isInstanceOf(Result.Ok.class);
    }

    @Test
    void keepsWhatWasBooked_whenClosedRightAfterOpening() {
        try (Workshop workshop = workshops.open(folder).orThrow()) {
            assertThat(workshop.view().find(Kit.TYPE, KIT)).isPresent();
        }
        try (Workshop workshop = workshops.open(folder).orThrow()) {
            var found = new ArrayList<>();
            workshop.ledger(LedgerQuery.all(), found::add);
            assertThat(found).hasSize(1);
        }
    }
}
