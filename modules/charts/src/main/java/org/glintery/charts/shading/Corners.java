package org.glintery.charts.shading;

/**
 * At most four points of light and the mixture of them that comes nearest to a wanted light in a quadratic form. Not safe
 * for several threads.
 */
final class Corners {

    private static final int MOST = 4;
    private static final double CARRIES = 1e-12;

    private final double[] red;
    private final double[] green;
    private final double[] blue;
    private final double[] form;
    private final ShareEquations equations = new ShareEquations(MOST + 1);
    private final int[] point = new int[MOST + 1];
    private final double[] share = new double[MOST + 1];
    private final double[] applied = new double[3];
    private int count = 1;
    private double wantedRed;
    private double wantedGreen;
    private double wantedBlue;

    /** @param form as {@link org.glintery.colour.DifferenceMetric} gives it; may change between calls */
    Corners(double[] red, double[] green, double[] blue, double[] form) {
        this.red = red;
        this.green = green;
        this.blue = blue;
        this.form = form;
        share[0] = 1;
    }

    void want(double r, double g, double b) {
        wantedRed = r;
        wantedGreen = g;
        wantedBlue = b;
    }

    /** How far the mixture is off. */
    double redOff() {
        return mixed(red) - wantedRed;
    }

    double greenOff() {
        return mixed(green) - wantedGreen;
    }

    double blueOff() {
        return mixed(blue) - wantedBlue;
    }

    private double mixed(double[] channel) {
        double sum = 0;
        for (int i = 0; i < count; i++) {
            sum += share[i] * channel[point[i]];
        }
        return sum;
    }

    /** The form applied to what the mixture is off; gives the square of that in the form. */
    double pull(double[] pull) {
        double r = redOff();
        double g = greenOff();
        double b = blueOff();
        apply(r, g, b, pull);
        return pull[0] * r + pull[1] * g + pull[2] * b;
    }

    /** How far a point lies along the pull. */
    double reach(double[] pull, int of) {
        return pull[0] * (red[of] - wantedRed)
                + pull[1] * (green[of] - wantedGreen)
                + pull[2] * (blue[of] - wantedBlue);
    }

    private void apply(double r, double g, double b, double[] to) {
        to[0] = form[0] * r + form[1] * g + form[2] * b;
        to[1] = form[1] * r + form[3] * g + form[4] * b;
        to[2] = form[2] * r + form[4] * g + form[5] * b;
    }

    /** Takes a point in and mixes anew; gives false when rounding leaves nothing to be gained. */
    boolean join(int of) {
        if (count > MOST) {
            return false;
        }
        point[count] = of;
        share[count++] = 0;
        return settle();
    }

    /** Mixes anew from these points; those that do not carry leave. Gives false as {@link #join} does. */
    boolean settle() {
        while (fill().solve(count)) {
            double[] wished = equations.shares();
            double step = 1;
            for (int i = 0; i < count; i++) {
                if (wished[i] < CARRIES && share[i] > wished[i]) {
                    step = Math.min(step, share[i] / (share[i] - wished[i]));
                }
            }
            for (int i = 0; i < count; i++) {
                share[i] += step * (wished[i] - share[i]);
            }
            if (step >= 1) {
                return true;
            }
            leave();
        }
        return false;
    }

    private void leave() {
        int kept = 0;
        double sum = 0;
        for (int i = 0; i < count; i++) {
            if (share[i] > CARRIES) {
                share[kept] = share[i];
                point[kept] = point[i];
                sum += share[kept++];
            }
        }
        count = kept;
        for (int i = 0; i < count; i++) {
            share[i] /= sum;
        }
    }

    private ShareEquations fill() {
        for (int i = 0; i < count; i++) {
            int p = point[i];
            apply(red[p] - wantedRed, green[p] - wantedGreen, blue[p] - wantedBlue, applied);
            for (int j = 0; j < count; j++) {
                equations.product(i, j, reach(applied, point[j]));
            }
        }
        return equations;
    }
}
