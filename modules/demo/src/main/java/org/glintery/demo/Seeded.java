package org.glintery.demo;

import java.util.SplittableRandom;
import java.util.UUID;

/** Chance that repeats itself: the same seed gives the same ids and numbers. Not safe for several threads. */
final class Seeded {
    private final SplittableRandom random;

    Seeded(long seed) {
        random = new SplittableRandom(seed);
    }

    UUID id() {
        long high = random.nextLong() & ~0xF000L | 0x4000L;
        long low = random.nextLong() & 0x3FFFFFFFFFFFFFFFL | 0x8000000000000000L;
        return new UUID(high, low);
    }

    /** From the first to the last, both included. */
    int between(int first, int last) {
        return random.nextInt(first, last + 1);
    }

    boolean oneIn(int many) {
        return random.nextInt(many) == 0;
    }

    SplittableRandom branch() {
        return random.split();
    }
}
