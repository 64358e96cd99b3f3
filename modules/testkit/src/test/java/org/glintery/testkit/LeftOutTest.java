package org.glintery.testkit;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.opentest4j.AssertionFailedError;
import org.opentest4j.TestAbortedException;

class LeftOutTest {
    private String before;

    @BeforeEach
    void remember() {
        before = System.getProperty(LeftOut.PROPERTY, "");
        System.clearProperty(LeftOut.PROPERTY);
    }

    @AfterEach
    void putBack() {
        System.setProperty(LeftOut.PROPERTY, before);
    }

    private static void impossible() {
        LeftOut.unless(false, "full-disk", "the right to mount a small disk");
    }

    @Test
    void fails_andSaysWhatIsNeeded() {
        assertThatThrownBy(LeftOutTest::impossible)
                .isInstanceOf(AssertionFailedError.class)
                .hasMessageContaining("the right to mount a small disk")
                .hasMessageContaining("-Dglintery.leaveOut=full-disk");
        System.setProperty(LeftOut.PROPERTY, "full-disks");
        assertThatThrownBy(LeftOutTest::impossible).isInstanceOf(AssertionFailedError.class);
    }

    @Test
    void leavesOut_whatWasAskedFor() {
        System.setProperty(LeftOut.PROPERTY, "other,full-disk");
        assertThatThrownBy(LeftOutTest::impossible).isInstanceOf(TestAbortedException.class);
    }

    @Test
    void goesOn_whenItIsPossible() {
        LeftOut.unless(true, "full-disk", "nothing");
    }
}
