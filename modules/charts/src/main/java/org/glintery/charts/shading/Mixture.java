package org.glintery.charts.shading;

import org.glintery.colour.DifferenceMetric;
import org.glintery.colour.LinearRgb;

/**
 * Finds the mixture of drills that looks most like a wanted light: the point of their convex hull in linear light that is
 * nearest in the quadratic form of CIEDE2000, taken half way between both. By Wolfe's algorithm ("Finding the nearest point
 * in a polytope", Mathematical Programming 11:128-149, 1976): a few corners carry the point, the corner that lies farthest
 * on the other side joins them, those that no longer carry leave. It begins with the corners of the time before, which
 * mostly carry again. Not safe for several threads.
 */
final class Mixture {

    /** In squares of CIEDE2000, as a share. */
    private static final double GAP = 1e-6;

    private static final int MOST_STEPS = 60;
    private static final double NOTHING = 1e-10;
    /** Differences of light this small are none. */
    private static final double SAME = 1e-5;

    private final double[] red;
    private final double[] green;
    private final double[] blue;
    private final double[] form = new double[6];
    private final Corners corners;
    private final double[] pull = new double[3];

    double mixedRed;
    double mixedGreen;
    double mixedBlue;

    /** Of drills by their light. */
    Mixture(double[] red, double[] green, double[] blue) {
        this.red = red;
        this.green = green;
        this.blue = blue;
        corners = new Corners(red, green, blue, form);
    }

    /** Mixes for a wanted light; gives whether that is a mixture itself. */
    boolean mix(double wantedRed, double wantedGreen, double wantedBlue) {
        corners.want(wantedRed, wantedGreen, wantedBlue);
        DifferenceMetric.about(new LinearRgb(wantedRed, wantedGreen, wantedBlue), form);
        approach();
        double off = Math.abs(corners.redOff()) + Math.abs(corners.greenOff()) + Math.abs(corners.blueOff());
        if (off >= SAME) {
            LinearRgb between = new LinearRgb(
                    wantedRed + corners.redOff() / 2,
                    wantedGreen + corners.greenOff() / 2,
                    wantedBlue + corners.blueOff() / 2);
            DifferenceMetric.about(between, form);
            approach();
        }
        mixedRed = wantedRed + corners.redOff();
        mixedGreen = wantedGreen + corners.greenOff();
        mixedBlue = wantedBlue + corners.blueOff();
        return off < SAME;
    }

    private void approach() {
        boolean going = corners.settle();
        for (int step = 0; going && step < MOST_STEPS; step++) {
            double squared = corners.pull(pull);
            if (squared < NOTHING) {
                return;
            }
            int farthest = farthest();
            going = corners.reach(pull, farthest) < squared - GAP * (1 + squared) && corners.join(farthest);
        }
    }

    /** The drill that lies farthest against the pull. */
    private int farthest() {
        int farthest = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int drill = 0; drill < red.length; drill++) {
            double along = pull[0] * red[drill] + pull[1] * green[drill] + pull[2] * blue[drill];
            if (along < least) {
                least = along;
                farthest = drill;
            }
        }
        return farthest;
    }
}
