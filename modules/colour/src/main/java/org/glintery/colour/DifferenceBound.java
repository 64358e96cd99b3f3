package org.glintery.colour;

/**
 * What {@link Ciede2000} between two colours is at least, from a few products. With S_L, S_C, S_H and R_T of the paper,
 *
 * <p>dE² = (dL/S_L)² + (dC/S_C)² + (dH/S_H)² + R_T (dC/S_C)(dH/S_H).
 *
 * <ol>
 * <li>The last three terms are a quadratic form with the least eigenvalue 1 - |R_T|/2, so they are at least
 * (1 - |R_T|/2) ((dC/S_C)² + (dH/S_H)²).
 * <li>S_H = 1 + .015 C T with T at most 1.93 is never above S_C = 1 + .045 C, so these are at least
 * (1 - |R_T|/2) (dC² + dH²) / S_C².
 * <li>dC² + dH² = (s da)² + db², with the stretch s of the paper.
 * <li>S_L falls until lightness 50 and then rises: between two lightnesses it is nowhere above the greater of both ends.
 * <li>S_C and |R_T| grow with the mean chroma and s falls with it, also when the stretch is counted in (the slope of
 * C (1.5 - share/2) is .5 at least), so that a chroma rounded up keeps the bound.
 * <li>|R_T| is at most 2 sin 60° share; where neither colour has a negative b, the mean hue is at most 180° and |R_T| at
 * most 2 sin(60° exp(-3.8²)), below 1.2e-6.
 * </ol>
 *
 * Everything is rounded so that it stays a bound in floating point.
 */
final class DifferenceBound {

    /** Chroma from step to step of the tables; beyond the last step a colour is not bounded by them. */
    private static final double STEPS_A_UNIT = 8;

    private static final int STEPS = 2048;
    /**
     * Far above what rounding does, far below what matters. Differences are rounded by some 1e-14, the smallest ones too:
     * (d - 1e-13)² is at least d² (1 - 1e-9) - 1e-16 for every d.
     */
    private static final double ROUNDED_DOWN = 1 - 1e-9;

    private static final double ROUNDED_DOWN_BY = 1e-16;

    private static final double WITHOUT_BLUES = 1 - 0.6e-6;
    private static final double SIN_60 = Math.sin(Math.toRadians(60));

    /** By the mean chroma: what da² and db² weigh at least where neither colour has a negative b, and elsewhere. */
    private static final double[] A_WARM = new double[STEPS];

    private static final double[] B_WARM = new double[STEPS];
    private static final double[] A = new double[STEPS];
    private static final double[] B = new double[STEPS];

    static {
        for (int i = 0; i < STEPS; i++) {
            double chroma = (i + 1) / STEPS_A_UNIT;
            double stretch = Ciede2000.stretch(chroma);
            double scale = 1 + 0.045 * chroma * stretch;
            double turn = 1 - SIN_60 * Ciede2000.share7(chroma * stretch);
            double weight = ROUNDED_DOWN / (scale * scale);
            A_WARM[i] = WITHOUT_BLUES * weight * stretch * stretch;
            B_WARM[i] = WITHOUT_BLUES * weight;
            A[i] = turn * weight * stretch * stretch;
            B[i] = turn * weight;
        }
    }

    private DifferenceBound() {}

    /** The weight of dL² of a colour: between two colours the smaller of both holds. */
    static double lightnessWeight(double lightness) {
        double scale = Ciede2000.lightnessScale(lightness);
        return ROUNDED_DOWN / (scale * scale);
    }

    /**
     * The square of the bound.
     *
     * @param dL by how much the lightnesses differ at least, as da and db for a* and b*
     * @param lightnessWeight the smallest {@link #lightnessWeight} in question
     * @param meanChroma the greatest mean chroma in question
     * @param warm whether no colour in question has a negative b
     */
    static double squared(double dL, double da, double db, double lightnessWeight, double meanChroma, boolean warm) {
        double sum = dL * dL * lightnessWeight - ROUNDED_DOWN_BY;
        int step = (int) (meanChroma * STEPS_A_UNIT);
        if (step < STEPS) {
            sum += warm ? da * da * A_WARM[step] + db * db * B_WARM[step] : da * da * A[step] + db * db * B[step];
        }
        return sum > 0 ? sum : 0;
    }
}
