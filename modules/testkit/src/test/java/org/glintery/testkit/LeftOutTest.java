package org.glintery.testkit;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.opentest4j.AssertionFailedError;
import org.opentest4j.TestAbortedException;

class LeftOutTest {
    private static final String NEED = "the right to mount a small disk";

    @Test
    void fails_whereEverythingIsToBeChecked() {
        assertThatThrownBy(() -> LeftOut.unless(false, NEED, true))
                .isInstanceOf(AssertionFailedError.class)
                .hasMessageContaining(NEED);
    }

    @Test
    void leavesOutWithTheReason_elsewhere() {
        assertThatThrownBy(() -> LeftOut.unless(false, NEED, false))
                .isInstanceOf(TestAbortedException.class)
                .hasMessageContaining(NEED);
    }

    @Test
    void goesOn_whenItIsPossible() {
        LeftOut.unless(true, NEED, true);
    }
}
