package org.glintery.planning;

import org.glintery.api.Preview;

/**
 * Counting drills by weighing: a counted sample gives the mass of one, the heap is divided by it.
 *
 * <p>Uncertainty by the law of propagation (JCGM 100:2008, GUM, 5.1): {@code u^2(N) = N cv^2 + N^2 cv^2 / n0 +
 * (d / sqrt(12) / mu)^2 (1 + (N / n0)^2)}: the heap's own scatter, the sample's scatter carried over to the heap, and
 * the scale's last digit in both weighings.
 *
 * @param sampleCount n0, drills counted into the sample
 * @param sampleMassG their mass in grams
 * @param scatter cv, the standard deviation of a drill's mass over its mean; {@link #USUAL_SCATTER} when not measured
 * @param divisionG d, the last digit of the scale in grams
 */
@Preview(since = "1.0")
public record WeighingCount(int sampleCount, double sampleMassG, double scatter, double divisionG) {

    /** Assumed for drills of one kind; no published source. */
    public static final double USUAL_SCATTER = 0.06;

    /** Above this share of the count a number would only mislead. */
    private static final double MOST_UNCERTAIN = 0.1;

    /** @throws IllegalArgumentException for no sample, no mass, or a negative scatter or division */
    public WeighingCount {
        if (sampleCount <= 0 || !(sampleMassG > 0) || Double.isInfinite(sampleMassG)) {
            throw new IllegalArgumentException("no sample: " + sampleCount + " of " + sampleMassG + " g");
        }
        if (!(scatter >= 0) || !(divisionG >= 0)) {
            throw new IllegalArgumentException("scatter " + scatter + ", division " + divisionG);
        }
    }

    /**
     * @param count the nearest whole number
     * @param uncertainty one standard uncertainty, in drills
     * @param trusted false when a finer scale or a bigger sample should be asked for rather than the number shown
     */
    public record Counted(long count, double uncertainty, boolean trusted) {}

    /**
     * @param massG of the heap, without its container
     * @throws IllegalArgumentException for a negative or endless mass
     */
    public Counted count(double massG) {
        if (!(massG >= 0) || Double.isInfinite(massG)) {
            throw new IllegalArgumentException("not a mass: " + massG + " g");
        }
        double oneG = sampleMassG / sampleCount;
        double n = massG / oneG;
        double share = n / sampleCount;
        double reading = divisionG / Math.sqrt(12) / oneG;
        double uncertainty = Math.sqrt(n * scatter * scatter
                + n * n * scatter * scatter / sampleCount
                + reading * reading * (1 + share * share));
        return new Counted(Math.round(n), uncertainty, uncertainty <= MOST_UNCERTAIN * n);
    }
}
