package org.glintery.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Refusal;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.LedgerAction;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Kit;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Workshop;
import org.glintery.testkit.LedgerWork;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Undo goes from the newest change down, so that a maker meets no later work. Should it stand in the way all the same, it is
 * named and nothing is taken back.
 */
class InverseMakingTest {
    private static final UUID KIT = new UUID(4, 4);
    private static final UUID BOUGHT = new UUID(4, 5);
    private static final Spot BAG = LedgerWork.SPOTS.get(0);
    private static final Spot CANVAS = new Spot.OnCanvas(new UUID(8, 8));

    @TempDir
    Path temp;

    private void made(ChangeSet... changes) {
        try (Workshop workshop = new H2Workshops().create(temp.resolve("w")).orThrow()) {
            for (ChangeSet change : changes) {
                workshop.apply(change).orThrow();
            }
        }
    }

    /** Why a change can't be taken back although it is not the newest; empty when it can. */
    private Optional<Refusal> takenBack(long number) throws Exception {
        Database database = Database.open(temp.resolve("w"));
        try {
            var names = new Names();
            var codec = new JacksonCodec();
            Tables tables = Tables.over(database.connection(), names, codec);
            tables.names().load(database.connection());
            var documents = tables.documents().load();
            var read = LedgerReading.of(tables, names, codec, documents);
            Opening opened = Opening.of(tables, read::booked);
            var inverses = new InverseMaking(
                    tables,
                    new LedgerBook(names, read.memory(), new EffectSums(names), tables.movements()::row),
                    new DocumentSteps(codec, names.drills()),
                    UUID::randomUUID);
            return inverses.make(tables.changes().row(number), new Draft(opened.state(), Instant.EPOCH));
        } finally {
            database.close();
        }
    }

    private static ChangeSet move(UUID id, Spot from, Spot to, int count) {
        return ChangeSet.named("Move " + count)
                .post(LedgerAction.Movement.of(id, LedgerWork.DRILLS.get(0), from, to, Amount.counted(count), "moved"))
                .build();
    }

    private void refusesTheFirst(String sentence, String why) throws Exception {
        assertThat(takenBack(1)).hasValueSatisfying(refusal -> {
            assertThat(refusal.code()).isEqualTo("later-work");
            assertThat(refusal.text())
                    .startsWith("\"" + sentence + "\" can't be taken back any more, because later work stands on it.")
                    .contains(why);
        });
        assertThat(takenBack(2)).as("the newest can").isEmpty();
    }

    @Test
    void isRefused_whenTheDrillsHaveGoneElsewhere() throws Exception {
        made(move(BOUGHT, Spot.SUPPLIER, BAG, 10), move(UUID.randomUUID(), BAG, CANVAS, 4));
        refusesTheFirst("Move 10", "the bag");
    }

    @Test
    void isRefused_whenTheMovementWasTakenBackByItself() throws Exception {
        made(
                move(BOUGHT, Spot.SUPPLIER, BAG, 10),
                ChangeSet.named("A slip")
                        .post(new LedgerAction.Reversal(
                                UUID.randomUUID(), BOUGHT, "a slip", Optional.empty(), Optional.empty()))
                        .build());
        refusesTheFirst("Move 10", "taken back before");
    }

    @Test
    void isRefused_whenTheDocumentWasChangedOrRemoved() throws Exception {
        var shelve = ChangeSet.named("Shelve")
                .create(Kit.TYPE, KIT, Kit.titled("Ferry"))
                .build();
        for (ChangeSet later : List.of(
                ChangeSet.named("Rename")
                        .put(Kit.TYPE, KIT, Kit.titled("Ferry Slip"))
                        .build(),
                ChangeSet.named("Remove").remove(Kit.TYPE.ref(KIT)).build())) {
            made(shelve, later);
            refusesTheFirst("Shelve", "What it wrote was changed since.");
            Leftovers.remove(temp.resolve("w"));
        }
    }
}
