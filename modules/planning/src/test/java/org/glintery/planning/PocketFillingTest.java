package org.glintery.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.Random;
import java.util.stream.LongStream;
import org.glintery.planning.PocketFilling.Fill;
import org.glintery.planning.PocketFilling.Placement;
import org.glintery.planning.PocketFilling.Pocket;
import org.junit.jupiter.api.Test;

class PocketFillingTest {

    @Test
    void takesPocketsInOrder_whenEachHoldsItsItem() {
        assertThat(PocketFilling.fill(items(300, 500, 20), row(500, 500, 500)))
                .containsExactly(placed(0, fill(0, 300)), placed(1, fill(1, 500)), placed(2, fill(2, 20)));
    }

    @Test
    void splitsOverNeighbours_onlyWhenOneIsTooSmall() {
        assertThat(PocketFilling.fill(items(1_200, 400), row(500, 500, 500, 500)))
                .containsExactly(placed(0, fill(0, 500), fill(1, 500), fill(2, 200)), placed(1, fill(3, 400)));
    }

    @Test
    void goesOnBehindATakenPocket_whenTheRunBeforeItIsTooShort() {
        List<Pocket> row = List.of(pocket(500), taken(500), pocket(500), pocket(500));
        assertThat(PocketFilling.fill(items(900), row)).containsExactly(placed(0, fill(2, 500), fill(3, 400)));
        assertThat(PocketFilling.fill(items(100, 100), row))
                .containsExactly(placed(0, fill(0, 100)), placed(1, fill(2, 100)));
    }

    @Test
    void overflowsWhole_andLetsTheNextGoOn() {
        List<Placement> placements = PocketFilling.fill(items(2_000, 300), row(500, 500));
        assertThat(placements).containsExactly(placed(0), placed(1, fill(0, 300)));
        assertThat(placements.get(0).overflows()).isTrue();
    }

    @Test
    void trustsAPocketOfUnknownCapacity_andGivesAnUnknownItemOnePocket() {
        List<Pocket> row = List.of(new Pocket(true, OptionalLong.empty()), pocket(10), pocket(10));
        assertThat(PocketFilling.fill(List.of(OptionalLong.of(9_000), OptionalLong.empty(), OptionalLong.of(10)), row))
                .containsExactly(
                        placed(0, fill(0, 9_000)),
                        new Placement(1, List.of(new Fill(1, OptionalLong.empty()))),
                        placed(2, fill(2, 10)));
    }

    @Test
    void refusesNoRoom() {
        assertThatThrownBy(() -> PocketFilling.fill(items(0), row(1))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> PocketFilling.fill(items(1), row(-1))).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void losesNothingAndKeepsOrder_forRandomItems() {
        long seed = 99;
        Random random = new Random(seed);
        int splits = 0;
        for (int round = 0; round < 2_000; round++) {
            List<OptionalLong> items =
                    items(random.longs(random.nextInt(12), 1, 900).toArray());
            List<Pocket> row = new ArrayList<>();
            for (int i = random.nextInt(20); i > 0; i--) {
                row.add(new Pocket(random.nextInt(4) > 0, OptionalLong.of(1 + random.nextInt(500))));
            }
            List<Placement> placements = PocketFilling.fill(items, row);
            assertThat(placements).as("seed %d round %d", seed, round).hasSameSizeAs(items);
            int last = -1;
            for (Placement placement : placements) {
                long sum = 0;
                for (Fill fill : placement.fills()) {
                    assertThat(fill.pocket())
                            .as("seed %d round %d", seed, round)
                            .isGreaterThan(last);
                    last = fill.pocket();
                    Pocket pocket = row.get(last);
                    assertThat(pocket.free()).isTrue();
                    assertThat(fill.units().getAsLong())
                            .isBetween(1L, pocket.capacity().getAsLong());
                    sum += fill.units().getAsLong();
                }
                assertThat(placement.overflows()
                                || sum == items.get(placement.item()).getAsLong())
                        .as("seed %d round %d", seed, round)
                        .isTrue();
                splits += placement.split() ? 1 : 0;
            }
        }
        assertThat(splits).as("seed %d", seed).isPositive();
    }

    private static List<OptionalLong> items(long... units) {
        return LongStream.of(units).mapToObj(OptionalLong::of).toList();
    }

    private static List<Pocket> row(long... capacities) {
        return LongStream.of(capacities).mapToObj(PocketFillingTest::pocket).toList();
    }

    private static Pocket pocket(long capacity) {
        return new Pocket(true, OptionalLong.of(capacity));
    }

    private static Pocket taken(long capacity) {
        return new Pocket(false, OptionalLong.of(capacity));
    }

    private static Fill fill(int pocket, long units) {
        return new Fill(pocket, OptionalLong.of(units));
    }

    private static Placement placed(int item, Fill... fills) {
        return new Placement(item, List.of(fills));
    }
}
