package org.glintery.storage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.glintery.storage.PocketSeating.Seated;
import org.glintery.storage.PocketSeating.Share;
import org.junit.jupiter.api.Test;

class PocketSeatingTest {

    private static final Optional<Long> HUNDRED = Optional.of(100L);

    @Test
    void givesEachHeapItsPocket_inOrder() {
        assertThat(PocketSeating.seat(List.of(40L, 100L), List.of(HUNDRED, HUNDRED, HUNDRED)))
                .containsExactly(
                        new Seated(List.of(new Share(0, 40)), 0), new Seated(List.of(new Share(1, 100)), 0));
    }

    @Test
    void givesFurtherPockets_whenOneIsTooSmall() {
        assertThat(PocketSeating.seat(List.of(250L), List.of(HUNDRED, HUNDRED, HUNDRED)))
                .containsExactly(new Seated(List.of(new Share(0, 100), new Share(1, 100), new Share(2, 50)), 0));
    }

    @Test
    void keepsAPocketForEachLaterHeap_whenPocketsAreScarce() {
        assertThat(PocketSeating.seat(List.of(250L, 10L), List.of(HUNDRED, HUNDRED)))
                .containsExactly(
                        new Seated(List.of(new Share(0, 100)), 150), new Seated(List.of(new Share(1, 10)), 0));
    }

    @Test
    void takesAnyHeap_whenTheCapacityIsNotKnown() {
        assertThat(PocketSeating.seat(List.of(5_000L), List.of(Optional.empty())))
                .containsExactly(new Seated(List.of(new Share(0, 5_000)), 0));
    }

    @Test
    void leavesTheLastHeapsWithout_whenPocketsRunOut() {
        assertThat(PocketSeating.seat(List.of(1L, 2L), List.of(HUNDRED)).get(1)).isEqualTo(new Seated(List.of(), 2));
    }
}
