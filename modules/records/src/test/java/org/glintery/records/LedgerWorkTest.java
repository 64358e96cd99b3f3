package org.glintery.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;
import org.glintery.api.Result;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.LedgerAction;
import org.glintery.api.ledger.Spot;
import org.glintery.api.workshop.Applied;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.LedgerQuery;
import org.glintery.api.workshop.View;
import org.glintery.api.workshop.Workshop;
import org.glintery.testkit.LedgerWork;
import org.glintery.testkit.PlainLedger;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The real ledger beside a plain one, compared after every step. */
class LedgerWorkTest {
    private static final long SEED = 20260301;
    private static final int BOOKED = 10_000;
    private static final Set<String> EXPECTED_REFUSALS = Set.of(
            "not-enough",
            "id-reused",
            "same-spot",
            "nothing-to-move",
            "not-inside",
            "amount-needed",
            "unknown-movement",
            "already-reversed",
            "reserved",
            "not-available",
            "change-repeated");

    @TempDir
    Path temp;

    private final DayClock clock = new DayClock();
    private final H2Workshops workshops = new H2Workshops(clock, ChangeMaking.StepWatch.NONE);
    private final Map<String, Integer> outcomes = new TreeMap<>();

    @ParameterizedTest
    @ValueSource(longs = {SEED, 31, 4_711})
    void agreesWithThePlainLedger_afterEveryStep(long seed) {
        Workshop workshop = workshops.create(temp.resolve("w")).orThrow();
        var plain = new PlainLedger();
        var work = new LedgerWork(seed);
        Map<Class<?>, Integer> kinds = new HashMap<>();
        try {
            run(work, () -> plain.booked() < BOOKED, workshop, plain);
            workshop.ledger(
                    LedgerQuery.all(), entry -> kinds.merge(entry.action().getClass(), 1, Integer::sum));
            String digest = workshop.view().contentDigest();
            assertThat(workshop.check().problems()).isEmpty();
            workshop.close();
            workshop = workshops.open(temp.resolve("w")).orThrow();
            assertThat(workshop.view().contentDigest()).isEqualTo(digest);
            run(work, () -> plain.booked() < BOOKED + 300, workshop, plain);
        } finally {
            workshop.close();
        }
        assertThat(outcomes.keySet())
                .as("what happened, with seed %d: %s", seed, outcomes)
                .containsAll(EXPECTED_REFUSALS);
        assertThat(outcomes.get("undone")).isGreaterThan(1_000);
        assertThat(outcomes.get("redone")).isGreaterThan(500);
        assertThat(outcomes.get("ok")).isGreaterThan(5_000);
        assertThat(outcomes.get("change-repeated")).isGreaterThan(50);
        assertThat(EXPECTED_REFUSALS.stream().mapToInt(outcomes::get).sum())
                .as("refusals")
                .isGreaterThan(2_000);
        assertThat(kinds.values().stream().mapToInt(many -> many).sum())
                .as("booked, by the ledger itself")
                .isGreaterThanOrEqualTo(BOOKED);
        assertThat(kinds.get(LedgerAction.Movement.class)).isGreaterThan(7_000);
        assertThat(kinds.get(LedgerAction.Stocktake.class)).isGreaterThan(800);
        assertThat(kinds.get(LedgerAction.Reversal.class)).isGreaterThan(1_000);
    }

    private void run(LedgerWork work, BooleanSupplier goOn, Workshop workshop, PlainLedger plain) {
        ChangeSet change = null;
        while (goOn.getAsBoolean()) {
            if (work.oneIn(40)) {
                clock.nextDay();
            }
            if (work.oneIn(9)) {
                same("undone", plain.undo(), workshop.undo(), work);
                if (work.oneIn(2)) {
                    same("redone", plain.redo(), workshop.redo(), work);
                }
            }
            if (change == null || !work.oneIn(50)) {
                change = work.next(clock.day());
            }
            same("ok", plain.apply(change, clock.day()), workshop.apply(change), work);
            compare(workshop.view(), plain, work);
        }
    }

    private void same(String done, Set<String> expected, Result<Applied> got, LedgerWork work) {
        String code = got instanceof Result.Refused<Applied> refused
                ? refused.refusal().code()
                : done;
        outcomes.merge(code, 1, Integer::sum);
        assertThat(expected.isEmpty() ? Set.of(done) : expected)
                .as("after %d actions", work.actions())
                .contains(code);
    }

    private void compare(View view, PlainLedger plain, LedgerWork work) {
        for (Drill drill : LedgerWork.DRILLS) {
            for (Spot spot : LedgerWork.SPOTS) {
                assertThat(view.balance(spot, drill))
                        .as("after %d actions: %s of %s", work.actions(), spot, drill)
                        .isEqualTo(plain.balance(spot, drill));
                assertThat(view.contents(spot).containsKey(drill))
                        .isEqualTo(!plain.balance(spot, drill).isZero())
                        .isEqualTo(view.whereabouts(drill).containsKey(spot));
            }
            assertThat(view.inTheHouse(drill)).isEqualTo(plain.inTheHouse(drill));
            assertThat(view.reserved(drill)).isEqualTo(plain.reserved(drill, clock.day()));
            assertThat(view.available(drill)).isEqualTo(view.inTheHouse(drill) - view.reserved(drill));
        }
    }

    /** Mistakes a ledger could make, put into its own reckoning. */
    enum Mistake {
        DROPPED_REVERSAL,
        DOUBLE_POST,
        WRONG_SIGN
    }

    /** Reckons wrongly as soon as it is told to. */
    private static final class Mistaken extends EffectSums {
        private final Mistake mistake;
        private final BooleanSupplier begun;

        Mistaken(Names names, Mistake mistake, BooleanSupplier begun) {
            super(names);
            this.mistake = mistake;
            this.begun = begun;
        }

        @Override
        BalanceMap after(LedgerAction action, Effect effect, BalanceMap before) {
            BalanceMap right = super.after(action, effect, before);
            boolean mistaken = mistake == Mistake.DROPPED_REVERSAL
                    ? action instanceof LedgerAction.Reversal
                    : action instanceof LedgerAction.Movement;
            if (!mistaken || !begun.getAsBoolean()) {
                return right;
            }
            return switch (mistake) {
                case DROPPED_REVERSAL -> before;
                case DOUBLE_POST -> super.after(action, effect, right);
                case WRONG_SIGN -> super.after(action, effect.inverse(), before);
            };
        }
    }

    @ParameterizedTest
    @EnumSource
    void tellsTheLedgersApart_whenOneMakesAMistake(Mistake mistake) {
        var work = new LedgerWork(SEED);
        var plain = new PlainLedger();
        var begun = new AtomicBoolean();
        var mistaken = new H2Workshops(clock, new ChangeMaking.StepWatch() {
            @Override
            public void before(int place) {}

            @Override
            public EffectSums sums(Names names) {
                return new Mistaken(names, mistake, begun::get);
            }
        });
        try (Workshop workshop = mistaken.create(temp.resolve("w")).orThrow()) {
            // right at first, so that the mistake and nothing else is what is noticed
            run(work, () -> work.actions() < 300, workshop, plain);
            begun.set(true);
            int before = work.actions();
            assertThatThrownBy(() -> run(work, () -> work.actions() < before + 2_000, workshop, plain))
                    .isInstanceOf(AssertionError.class)
                    .hasMessageContaining("actions");
        }
    }
}
