package org.glintery.planning.clearing;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.glintery.planning.flow.Bounds;
import org.glintery.planning.flow.Residual;
import org.glintery.planning.flow.Work;

/**
 * Local search for few parcels: takes a link out, sends its packets another way along links in use, and keeps that when
 * the charges don't rise. One new link may be opened on the way, which may keep the sum and leads to other plans. Where
 * nothing more is found, some links are closed at any price and the search goes on from there.
 *
 * <p>Not safe for use by several threads.
 */
final class ParcelDescent {

    private static final int PATIENCE = 4;
    private static final int KICKED = 3;
    private static final int TOLLS_OF_A_KICK = 3;
    private static final int BARRED = 10;
    private static final int BARRED_AFTER_A_KICK = 1_000;

    private final GivingRule rule;
    private final int[] link;
    private final long[] charge;
    private final int[][] lanesOf;
    private final int[] packets;
    private final long[] barredUntil;
    private final Residual residual;
    private final Random random;
    private final Work work;
    private long sum;
    private long moves;

    /** @param start a plan that keeps the rule */
    ParcelDescent(ParcelNetwork net, Bounds bounds, GivingRule rule, int[] start, long seed, Work work) {
        this.rule = rule;
        this.work = work;
        link = net.links();
        charge = net.charges().charge();
        lanesOf = net.lanesOfLinks();
        packets = new int[charge.length];
        barredUntil = new long[charge.length];
        random = new Random(seed);
        residual = new Residual(net.network(), bounds, start, this::changed, work);
        for (int arc = 0; arc < start.length; arc++) {
            changed(arc, start[arc]);
        }
    }

    long charges() {
        return sum;
    }

    int[] flow() {
        return residual.flows();
    }

    /** Goes through all links so many times or until the work is spent, and ends with the best plan seen. */
    void run(int passes) {
        int[] best = flow();
        long least = sum;
        int since = 0;
        for (int pass = 0; pass < passes && !work.isSpent(); pass++) {
            long before = sum;
            closeSome(pass % 2 == 1);
            since = sum < before ? 0 : since + 1;
            if (sum < least) {
                least = sum;
                best = flow();
            }
            if (since >= PATIENCE) {
                since = 0;
                if (sum > least) {
                    residual.become(best);
                }
                kick();
            }
        }
        residual.become(best);
    }

    /** Tries each link in use once, those with few packets rather first. */
    private void closeSome(boolean sideways) {
        double[] weight = new double[charge.length];
        Arrays.setAll(weight, l -> packets[l] * (0.5 + random.nextDouble()));
        int[] order = IntStream.range(0, charge.length)
                .filter(l -> packets[l] > 0)
                .boxed()
                .sorted((a, b) -> Double.compare(weight[a], weight[b]))
                .mapToInt(Integer::intValue)
                .toArray();
        for (int l : order) {
            if (work.isSpent()) {
                return;
            }
            long before = sum;
            int mark = residual.mark();
            boolean closed = packets[l] > 0 && close(l, before - (sideways ? 0 : 1), 1);
            if (closed && (sum < before || sideways && sum == before) && rule.brokenFor(residual::flow) < 0) {
                residual.settle();
                barredUntil[l] = moves + BARRED + random.nextInt(2 * BARRED);
            } else {
                residual.back(mark);
            }
        }
    }

    private void kick() {
        for (int k = 0; k < KICKED; k++) {
            int[] used = IntStream.range(0, charge.length)
                    .filter(l -> packets[l] > 0)
                    .toArray();
            if (used.length == 0) {
                return;
            }
            int l = used[random.nextInt(used.length)];
            int mark = residual.mark();
            if (close(l, Long.MAX_VALUE / 2, TOLLS_OF_A_KICK) && rule.brokenFor(residual::flow) < 0) {
                residual.settle();
                barredUntil[l] = moves + BARRED_AFTER_A_KICK;
            } else {
                residual.back(mark);
            }
        }
    }

    /** @param most what all links may cost in the end */
    private boolean close(int closing, long most, int tolls) {
        moves++;
        for (int arc : lanesOf[closing]) {
            while (residual.flow(arc) > 0) {
                long left = most - sum + charge[closing];
                if (!residual.divert(arc, step -> toll(step, closing, left), tolls)) {
                    return false;
                }
            }
        }
        return true;
    }

    private int toll(int arc, int closing, long left) {
        int l = link[arc];
        if (l < 0) {
            return Residual.Toll.FREE;
        }
        if (l == closing) {
            return Residual.Toll.BARRED;
        }
        if (packets[l] > 0) {
            return Residual.Toll.FREE;
        }
        return charge[l] <= left && barredUntil[l] <= moves ? Residual.Toll.PAID : Residual.Toll.BARRED;
    }

    private void changed(int arc, int by) {
        int l = link[arc];
        if (l >= 0 && by != 0) {
            boolean was = packets[l] > 0;
            packets[l] += by;
            if (was != packets[l] > 0) {
                sum += was ? -charge[l] : charge[l];
            }
        }
    }
}
