package org.glintery.planning.clearing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Rounds of a club's size, within a patience that is counted in steps; times are {@link ClearingBenchmark}'s. */
class ClearingSizeTest {

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void provesAllParcels_inASparseRoundOfForty(long seed) {
        Round round = InventedRounds.sparse().round(seed);
        Clearing clearing = RoundClearing.clear(round, Patience.USUAL);
        assertThat(PlanCheck.complaints(round, clearing)).as("seed %d", seed).isEmpty();
        assertThat(clearing.parcelsProven()).as("seed %d", seed).isTrue();
        assertThat(clearing.parcels()).as("seed %d", seed).isLessThan(clearing.plainParcels());
    }

    @Test
    void savesAThirdOfTheParcels_andSaysHowFewTheyCouldBe_inADenseRoundOfForty() {
        Round round = InventedRounds.dense().round(1);
        Clearing clearing = RoundClearing.clear(round, new Patience(200_000_000));
        assertThat(PlanCheck.complaints(round, clearing)).isEmpty();
        assertThat(clearing.wantsProven()).isTrue();
        assertThat(clearing.parcels()).isLessThan(clearing.plainParcels() * 7 / 10);
        assertThat(clearing.parcelsBound()).isBetween(clearing.parcels() / 4, clearing.parcels());
    }

    @Test
    void comesOutAlike_whenTheSameRoundIsClearedAgain() {
        Round round = InventedRounds.middling().round(1);
        assertThat(RoundClearing.clear(round, Patience.SHORT)).isEqualTo(RoundClearing.clear(round, Patience.SHORT));
    }
}
