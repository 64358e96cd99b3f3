package org.glintery.storage.ui;

import static org.assertj.core.api.Assertions.assertThat;

import org.glintery.api.ledger.Balance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers in the sentences of the Cabinet: none, one and many. */
class PlanWordsTest {

    @ParameterizedTest
    @CsvSource({
        "0, 1, No pocket and one bag.",
        "1, 0, One pocket.",
        "1, 1, One pocket and one bag.",
        "12, 3, 12 pockets and 3 bags.",
        "1000, 1200, 1\u2009000 pockets and 1\u2009200 bags."
    })
    void tellsWhereAKitUpPuts(int pockets, int bags, String words) {
        assertThat(Bundle.KitUpSheet_plan(pockets, Balance.grouped(pockets), bags, Balance.grouped(bags)))
                .isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource({"0, Nothing is left to move.", "1, One move.", "2, 2 moves.", "1200, 1\u2009200 moves."})
    void tellsHowOftenHandsMove(int moves, String words) {
        assertThat(Bundle.KitDownSheet_plan(moves, Balance.grouped(moves))).isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource({"0, no drills", "1, 1 kind of drill", "2, 2 kinds of drills", "1200, 1\u2009200 kinds of drills"})
    void tellsWhatABagHolds(int kinds, String words) {
        assertThat(Bundle.BagCell_several(kinds, Balance.grouped(kinds))).isEqualTo(words);
    }
}
