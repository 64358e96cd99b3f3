package org.glintery.testkit.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.LedgerAction;
import org.glintery.api.ledger.LedgerEntry;
import org.glintery.api.ledger.Spot;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.LedgerQuery;
import org.glintery.api.workshop.Precondition;
import org.glintery.api.workshop.Reservation;
import org.glintery.testkit.LedgerWork;
import org.glintery.testkit.PlainLedger;
import org.junit.jupiter.api.Test;

/** The ledger: balances, what is refused, and seeded work held against a plain one. */
abstract class LedgerTests extends WorkshopContract.Part {
    private static final long SEED = 20261125;
    private static final int ACTIONS = 1_500;
    private static final Drill DRILL = LedgerWork.DRILLS.get(0);
    private static final Spot BAG = LedgerWork.SPOTS.get(0);
    private static final Spot CANVAS = LedgerWork.SPOTS.get(4);

    private String move(Spot from, Spot to, Amount amount) {
        return apply(ChangeSet.named("Move")
                .post(LedgerAction.Movement.of(UUID.randomUUID(), DRILL, from, to, amount, "moved")));
    }

    @Test
    void addsUpWhatIsMoved_withItsUncertainty() {
        move(Spot.SUPPLIER, BAG, Amount.rough(200, 3));
        move(BAG, CANVAS, Amount.rough(50, 4));

        assertThat(view().balance(BAG, DRILL)).isEqualTo(new Balance(150, 25, 0));
        assertThat(view().balance(CANVAS, DRILL)).isEqualTo(new Balance(50, 16, 0));
        assertThat(view().balance(Spot.SUPPLIER, DRILL).count()).isEqualTo(-200);
        assertThat(view().inTheHouse(DRILL)).isEqualTo(150);
        assertThat(view().contents(BAG)).isEqualTo(Map.of(DRILL, new Balance(150, 25, 0)));
        assertThat(view().whereabouts(DRILL).keySet()).isEqualTo(Set.of(Spot.SUPPLIER, BAG, CANVAS));
        assertThat(view().spots()).isEqualTo(Set.of(Spot.SUPPLIER, BAG, CANVAS));
    }

    @Test
    void refusesToEndBelowZero_andWhatWasComputedFromAnotherBalance() {
        move(Spot.SUPPLIER, BAG, Amount.counted(10));
        assertThat(move(BAG, CANVAS, Amount.counted(11))).isEqualTo("not-enough");
        assertThat(apply(ChangeSet.named("late")
                        .require(new Precondition.BalanceAt(BAG, DRILL, Balance.ZERO))
                        .post(LedgerAction.Movement.of(
                                UUID.randomUUID(), DRILL, BAG, CANVAS, Amount.counted(1), "moved"))))
                .isEqualTo("out-of-date");
    }

    @Test
    void countsAMovementOnce_andRefusesItsIdForAnother() {
        UUID id = UUID.randomUUID();
        var said = LedgerAction.Movement.of(id, DRILL, Spot.SUPPLIER, BAG, Amount.counted(5), "bought");
        var other = LedgerAction.Movement.of(id, DRILL, Spot.SUPPLIER, BAG, Amount.counted(6), "bought");
        UUID never = UUID.randomUUID();
        assertThat(workshop().booked(List.of(id, never))).isEmpty();
        apply(ChangeSet.named("a").post(said));
        assertThat(workshop().booked(List.of(id, never))).containsExactly(id);
        assertThat(apply(ChangeSet.named("b").post(said))).isEqualTo("ok");
        assertThat(apply(ChangeSet.named("c").post(other))).isEqualTo("id-reused");
        assertThat(view().balance(BAG, DRILL).count()).isEqualTo(5);
    }

    @Test
    void setsDrillsAside_andRefusesToTakeThem() {
        move(Spot.SUPPLIER, BAG, Amount.counted(10));
        var eight = new Reservation(DRILL, 8, Reservation.FOR_PIECE, new UUID(1, 1), Optional.empty());
        var eleven = new Reservation(DRILL, 11, Reservation.FOR_PIECE, new UUID(1, 1), Optional.empty());
        UUID id = new UUID(2, 2);
        assertThat(apply(ChangeSet.named("r").create(Reservation.TYPE, id, eleven)))
                .isEqualTo("not-available");
        assertThat(apply(ChangeSet.named("r").create(Reservation.TYPE, id, eight)))
                .isEqualTo("ok");
        assertThat(view().reserved(DRILL)).isEqualTo(8);
        assertThat(view().available(DRILL)).isEqualTo(2);
        assertThat(move(BAG, CANVAS, Amount.counted(3))).isEqualTo("reserved");
        assertThat(apply(ChangeSet.named("r").remove(Reservation.TYPE.ref(id)))).isEqualTo("ok");
        assertThat(move(BAG, CANVAS, Amount.counted(3))).isEqualTo("ok");
    }

    @Test
    void tellsItsEntries_asTheyAreAskedFor() {
        move(Spot.SUPPLIER, BAG, Amount.counted(10));
        move(BAG, CANVAS, Amount.counted(4));
        move(BAG, Spot.LOST, Amount.counted(1));
        assertThat(entries(LedgerQuery.all())).containsExactly(1L, 2L, 3L);
        assertThat(entries(new LedgerQuery(2, 1, Optional.empty(), Optional.empty())))
                .containsExactly(2L);
        assertThat(entries(new LedgerQuery(1, 9, Optional.of(DRILL), Optional.of(CANVAS))))
                .containsExactly(2L);
        assertThat(entries(new LedgerQuery(1, 9, Optional.of(LedgerWork.DRILLS.get(1)), Optional.empty())))
                .isEmpty();
    }

    private List<Long> entries(LedgerQuery query) {
        List<Long> sequences = new ArrayList<>();
        workshop().ledger(query, (LedgerEntry entry) -> sequences.add(entry.sequence()));
        return sequences;
    }

    @Test
    void agreesWithAPlainLedger_overSeededWork() {
        PlainLedger plain = new PlainLedger();
        LedgerWork work = new LedgerWork(SEED);
        LocalDate day = LocalDate.now();
        int refused = 0;
        while (work.actions() < ACTIONS) {
            ChangeSet change = work.next(day);
            Set<String> expected = plain.apply(change, day);
            String got = code(workshop().apply(change));
            refused += got.equals("ok") ? 0 : 1;
            assertThat(expected.isEmpty() ? Set.of("ok") : expected)
                    .as("seed %d, after %d actions", SEED, work.actions())
                    .contains(got);
            if (work.oneIn(9)) {
                assertThat(code(workshop().undo()).equals("ok"))
                        .isEqualTo(plain.undo().isEmpty());
            }
            compare(plain, day, work);
        }
        assertThat(refused).as("refusals, with seed %d", SEED).isGreaterThan(50);
        assertThat(workshop().check().problems()).isEmpty();
    }

    private void compare(PlainLedger plain, LocalDate day, LedgerWork work) {
        for (Drill drill : LedgerWork.DRILLS) {
            for (Spot spot : LedgerWork.SPOTS) {
                assertThat(view().balance(spot, drill))
                        .as("seed %d, after %d actions: %s of %s", SEED, work.actions(), spot, drill)
                        .isEqualTo(plain.balance(spot, drill));
            }
            assertThat(view().reserved(drill)).isEqualTo(plain.reserved(drill, day));
        }
    }
}
