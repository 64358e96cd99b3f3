package org.glintery.testkit;

import java.util.Arrays;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;

/**
 * Tests of what not every machine can do, such as mounting a small disk. They fail there and say why, so that nobody takes
 * a guard that never ran for one that holds; {@code -Dglintery.leaveOut=full-disk,...} leaves them out on purpose.
 */
public final class LeftOut {
    /** What is left out, with commas between. */
    public static final String PROPERTY = "glintery.leaveOut";

    private LeftOut() {}

    /**
     * Goes on when it is possible; else fails, or leaves the test out when that was asked for.
     *
     * @param what one word, such as {@code full-disk}
     * @param need what is lacking, such as "the right to mount a small disk"
     */
    public static void unless(boolean possible, String what, String need) {
        if (!possible) {
            boolean asked =
                    Arrays.asList(System.getProperty(PROPERTY, "").split(",")).contains(what);
            Assumptions.assumeFalse(asked, "left out as asked: " + what);
            Assertions.fail("This test needs " + need + ". Give it that, or leave it out on purpose with -D" + PROPERTY
                    + "=" + what + ".");
        }
    }
}
