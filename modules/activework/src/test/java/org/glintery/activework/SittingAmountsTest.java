package org.glintery.activework;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;
import org.glintery.api.activework.Laid;
import org.glintery.api.activework.Sitting;
import org.glintery.api.time.About;
import org.junit.jupiter.api.Test;

class SittingAmountsTest {

    private static final UUID PIECE = new UUID(1, 2);
    private static final About MAY = About.on(LocalDate.of(2025, 5, 2));

    private static Sitting sitting(long drills, int minutes) {
        return new Sitting(
                PIECE,
                MAY,
                Optional.empty(),
                Optional.empty(),
                Optional.of(minutes).filter(m -> m > 0),
                0,
                drills > 0 ? Laid.drills(drills) : Laid.NOT_SAID,
                Optional.empty(),
                "");
    }

    /** What each sitting laid, -1 where it is not known. @param told drills and minutes by turns, 0 where not said */
    private static List<Double> amounts(int... told) {
        List<Sitting> sittings = IntStream.range(0, told.length / 2)
                .mapToObj(i -> sitting(told[2 * i], told[2 * i + 1]))
                .toList();
        return SittingAmounts.of(sittings, laid -> laid.drills().map(Long::doubleValue)).stream()
                .map(amount -> amount.orElse(-1.0))
                .toList();
    }

    @Test
    void spreadsByMinutes_betweenTwoThatSayHowMuch() {
        assertThat(amounts(0, 30, 0, 60, 900, 90)).containsExactly(150.0, 300.0, 450.0);
        assertThat(amounts(500, 10, 0, 90, 100, 10)).containsExactly(500.0, 90.0, 10.0);
    }

    @Test
    void oneWithoutMinutesCountsAsAnAverageOne_andAllAlikeWhereNoneHas() {
        assertThat(amounts(0, 30, 0, 0, 600, 90)).containsExactly(100.0, 200.0, 300.0);
        assertThat(amounts(0, 0, 0, 0, 600, 0)).containsExactly(200.0, 200.0, 200.0);
    }

    @Test
    void afterTheLastThatSaysHowMuchItIsNotKnown() {
        assertThat(amounts(600, 30, 0, 30)).containsExactly(600.0, -1.0);
    }
}
