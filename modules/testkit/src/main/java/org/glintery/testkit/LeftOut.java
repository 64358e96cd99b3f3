package org.glintery.testkit;

import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;

/**
 * Tests of what not every machine can do, such as mounting a small disk. Where everything is to be checked, with CI=true in
 * the environment, they fail and say what they need, so that nobody takes a guard that never ran for one that holds;
 * elsewhere they are left out with that reason.
 */
public final class LeftOut {
    private LeftOut() {}

    /** Goes on when it is possible. @param need what is lacking, such as "the right to mount a small disk" */
    public static void unless(boolean possible, String need) {
        unless(possible, need, "true".equals(System.getenv("CI")));
    }

    static void unless(boolean possible, String need, boolean everything) {
        if (!possible) {
            Assumptions.assumeTrue(everything, "left out: it needs " + need);
            Assertions.fail("This test needs " + need + ".");
        }
    }
}
