package org.glintery.api.verb;

import static org.assertj.core.api.Assertions.assertThat;

import org.glintery.api.ledger.Balance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WrittenWholeTest {

    @Test
    void readsWhatWePrint() {
        for (long number : new long[] {0, 7, 1_000, 12_345, 1_000_000_000, -1_240, Long.MAX_VALUE}) {
            assertThat(WrittenWhole.of(Balance.grouped(number))).contains(number);
            assertThat(WrittenWhole.of(" " + number)).contains(number);
        }
        assertThat(WrittenWhole.of("1 000")).contains(1_000L);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "1,000", "1.000", "10 00", "1 0000", "1  000", "many", "9223372036854775808", "0x10", "1.5"})
    void guessesNothing(String written) {
        assertThat(WrittenWhole.of(written)).isEmpty();
    }
}
