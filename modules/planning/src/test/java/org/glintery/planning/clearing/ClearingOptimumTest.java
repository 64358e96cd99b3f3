package org.glintery.planning.clearing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Clearings against optima that were found in other ways. */
class ClearingOptimumTest {

    private static final long SEED = 20_261;
    private static final int TINY_ROUNDS = 300;

    @Test
    void movesAsManyPacketsAsCan_inThePublishedBarterInstances() {
        Map<String, Integer> optima = Barter.optima();
        assertThat(optima).hasSize(10);
        optima.forEach((instance, packets) -> {
            Round round = Barter.round(instance);
            Clearing clearing = RoundClearing.clear(round, Patience.USUAL);
            assertThat(PlanCheck.complaints(round, clearing)).as(instance).isEmpty();
            assertThat(clearing.wantsMet()).as(instance).isEqualTo(packets);
            assertThat(clearing.wantsBound()).as(instance).isEqualTo(packets);
            assertThat(clearing.fairestProven()).as(instance).isTrue();
        });
    }

    @Test
    void agreesWithTryingEveryPlan_inAllStages() {
        Random random = new Random(SEED);
        int throughOrganiser = 0;
        int uneven = 0;
        int moved = 0;
        for (int i = 0; i < TINY_ROUNDS; i++) {
            Round round = TinyRounds.next(random);
            Clearing clearing = RoundClearing.clear(round, Patience.USUAL);
            String which = "seed " + SEED + " round " + i + ": " + round;
            assertThat(outcome(clearing)).as(which).isEqualTo(EveryPlan.best(round));
            assertThat(PlanCheck.complaints(round, clearing)).as(which).isEmpty();
            assertThat(clearing.parcelsProven()).as(which).isTrue();
            moved += clearing.wantsMet();
            uneven += clearing.unfairness() > 0 ? 1 : 0;
            throughOrganiser += clearing.transfers().stream().anyMatch(Transfer::throughOrganiser) ? 1 : 0;
        }
        assertThat(moved)
                .as("packets moved, so that there was something to compare")
                .isGreaterThan(TINY_ROUNDS);
        assertThat(uneven).as("rounds that could not be even").isGreaterThan(TINY_ROUNDS / 20);
        assertThat(throughOrganiser).as("rounds that need the organiser").isPositive();
    }

    private static EveryPlan.Outcome outcome(Clearing clearing) {
        List<Integer> met = clearing.met().stream().map(Clearing.Met::packets).toList();
        return new EveryPlan.Outcome(met, clearing.postage(), clearing.parcels(), clearing.unfairness());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void neverMovesLessThanSwappingTwoByTwo(long seed, TestReporter reporter) {
        for (InventedRounds rounds : List.of(InventedRounds.sparse(), InventedRounds.middling())) {
            Round round = rounds.round(seed);
            Clearing clearing = RoundClearing.clear(round, new Patience(0));
            int byHand = PairwiseSwaps.packets(round);
            assertThat(PlanCheck.complaints(round, clearing))
                    .as("seed %d", seed)
                    .isEmpty();
            assertThat(clearing.wantsMet()).as("seed %d", seed).isGreaterThanOrEqualTo(byHand);
            reporter.publishEntry(
                    rounds.toString(), "seed " + seed + ": " + clearing.wantsMet() + " packets, two by two " + byHand);
        }
    }

    @Test
    void isNotOutdoneByTwoByTwo_inTinyRounds() {
        Random random = new Random(SEED);
        int gain = 0;
        for (int i = 0; i < TINY_ROUNDS; i++) {
            Round tiny = TinyRounds.next(random);
            List<Want> equal = tiny.wants().stream()
                    .map(want -> new Want(want.trader(), want.kinds(), want.packets(), 1))
                    .toList();
            Round round = new Round(tiny.traders(), tiny.offers(), equal, tiny.postage());
            int more = RoundClearing.clear(round, Patience.SHORT).wantsMet() - PairwiseSwaps.packets(round);
            assertThat(more).as("seed %d round %d", SEED, i).isNotNegative();
            gain += more;
        }
        assertThat(gain).as("packets gained").isPositive();
    }
}
