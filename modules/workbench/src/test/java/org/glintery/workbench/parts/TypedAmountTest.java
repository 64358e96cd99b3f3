package org.glintery.workbench.parts;

import static org.assertj.core.api.Assertions.assertThat;

import org.glintery.api.Result;
import org.glintery.api.ledger.Amount;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TypedAmountTest {
    @ParameterizedTest
    @ValueSource(strings = {"1240", "1 240", "1,240", "1.240", "1'240", "1\u2009240", " 1240 "})
    void readsThousandsHoweverTheyAreSetApart(String typed) {
        assertThat(TypedAmount.read(typed).orThrow()).isEqualTo(Amount.counted(1_240));
    }

    @ParameterizedTest
    @ValueSource(strings = {"about 200", "About 200", "ca. 200", "~200"})
    void aboutIsRough(String typed) {
        assertThat(TypedAmount.read(typed).orThrow()).isEqualTo(Amount.rough(200, 20));
    }

    @Test
    void nothingIsNotKnown_andNoughtIsNought() {
        assertThat(TypedAmount.read("  ").orThrow()).isEqualTo(Amount.unknown());
        assertThat(TypedAmount.read("0").orThrow()).isEqualTo(Amount.counted(0));
    }

    @ParameterizedTest
    @ValueSource(strings = {"12.5", "-3", "many", "1 24", "12345678901"})
    void refusesWhatIsNoNumberOfDrills(String typed) {
        assertThat(TypedAmount.read(typed)).isInstanceOf(Result.Refused.class);
    }
}
