package org.glintery.charts.palette;

import java.util.Arrays;

/**
 * Chooses k of some candidates so that the sum over weighted clients of the distance to the nearest chosen one is small:
 * k-medoids, begun greedily and bettered by exchanges of one chosen for one other until none helps (PAM: Kaufman and
 * Rousseeuw, 1990, with the exchanges reckoned at once for all chosen as in Schubert and Rousseeuw, Information Systems
 * 101:101804, 2021). Used once; not safe for several threads.
 */
final class Medoids {

    private static final double LEAST_GAIN = 1e-9;

    /** By client, then candidate, already weighted. */
    private final float[][] distance;

    private final boolean[] pinned;
    private final int[] chosen;
    /** Which of the chosen is nearest to each client, how far it is, and how far the next one is. */
    private final int[] nearest;

    private final float[] near;
    private final float[] next;
    private int count;

    /** @param pinned candidates that are chosen in any case, at most k */
    Medoids(float[][] distance, boolean[] pinned, int k) {
        this.distance = distance;
        this.pinned = pinned;
        chosen = new int[k];
        nearest = new int[distance.length];
        near = new float[distance.length];
        next = new float[distance.length];
        for (int candidate = 0; candidate < pinned.length; candidate++) {
            if (pinned[candidate]) {
                chosen[count++] = candidate;
            }
        }
        look();
    }

    /** Places among the candidates, rising. */
    int[] chosen() {
        while (count < chosen.length) {
            chosen[count++] = mostHelpful();
            look();
        }
        int settled = 0;
        int candidates = pinned.length;
        for (int candidate = 0; settled < candidates; candidate = (candidate + 1) % candidates) {
            settled = exchange(candidate) ? 0 : settled + 1;
        }
        int[] rising = chosen.clone();
        Arrays.sort(rising);
        return rising;
    }

    private int mostHelpful() {
        int best = -1;
        double most = -1;
        for (int candidate = 0; candidate < pinned.length; candidate++) {
            if (!isChosen(candidate)) {
                double gain = 0;
                for (int client = 0; client < distance.length; client++) {
                    gain += Math.max(0, near[client] - distance[client][candidate]);
                }
                if (gain > most) {
                    most = gain;
                    best = candidate;
                }
            }
        }
        return best;
    }

    /** Takes a candidate for that one of the chosen whose going it makes good best, if that helps. */
    private boolean exchange(int candidate) {
        if (isChosen(candidate)) {
            return false;
        }
        double gain = 0;
        double[] loss = new double[count];
        for (int client = 0; client < distance.length; client++) {
            float d = distance[client][candidate];
            gain += Math.max(0, near[client] - d);
            loss[nearest[client]] += Math.min(next[client], Math.max(d, near[client])) - near[client];
        }
        int leaving = -1;
        for (int place = 0; place < count; place++) {
            if (!pinned[chosen[place]] && (leaving < 0 || loss[place] < loss[leaving])) {
                leaving = place;
            }
        }
        if (leaving < 0 || gain - loss[leaving] <= LEAST_GAIN * (1 + gain)) {
            return false;
        }
        chosen[leaving] = candidate;
        look();
        return true;
    }

    private boolean isChosen(int candidate) {
        for (int place = 0; place < count; place++) {
            if (chosen[place] == candidate) {
                return true;
            }
        }
        return false;
    }

    /** As long as none is chosen, each client is as far from one as from the farthest candidate. */
    private void look() {
        for (int client = 0; client < distance.length; client++) {
            float[] of = distance[client];
            float first = count == 0 ? largest(of) : Float.MAX_VALUE;
            float second = Float.MAX_VALUE;
            int place = 0;
            for (int i = 0; i < count; i++) {
                float d = of[chosen[i]];
                if (d < first) {
                    second = first;
                    first = d;
                    place = i;
                } else if (d < second) {
                    second = d;
                }
            }
            nearest[client] = place;
            near[client] = first;
            next[client] = second;
        }
    }

    private static float largest(float[] values) {
        float largest = 0;
        for (float value : values) {
            largest = Math.max(largest, value);
        }
        return largest;
    }
}
