package org.glintery.benchmarks.packaged;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.UUID;

/** Lines for {@code drills post -}: drills bought into sixty bags. The same seed gives the same lines. */
public final class PostedLines {

    private static final int BAGS = 60;
    private static final int CODES = 450;

    private final SplittableRandom random;

    public PostedLines(long seed) {
        random = new SplittableRandom(seed);
    }

    /** Lines of one movement each. */
    public List<byte[]> single(int count) {
        List<byte[]> lines = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            lines.add((movement(1 + random.nextInt(400)).json() + "\n").getBytes(StandardCharsets.UTF_8));
        }
        return lines;
    }

    /** Lines of one batch each. */
    public List<byte[]> batches(int count, int movements) {
        List<byte[]> lines = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            StringBuilder line = new StringBuilder("[");
            for (int m = 0; m < movements; m++) {
                line.append(m == 0 ? "" : ",")
                        .append(movement(1 + random.nextInt(400)).json());
            }
            lines.add(line.append("]\n").toString().getBytes(StandardCharsets.UTF_8));
        }
        return lines;
    }

    /** The next movement. */
    public PostedMovement movement(int count) {
        var id = new UUID(random.nextLong(), random.nextLong());
        return new PostedMovement(id, "P" + random.nextInt(CODES), "posted " + random.nextInt(BAGS), count);
    }
}
