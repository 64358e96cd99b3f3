package org.glintery.charts.shading;

import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.Supplier;
import org.glintery.colour.Lab;
import org.glintery.colour.LinearRgb;

/**
 * Boxes of Lab, and at their corners by how much the light there has to give way to become a mixture. In a box all of whose
 * corners are mixtures nothing gives way; in one none of whose corners is, it gives way as between them; in the others it
 * is worked out for each colour. Filled when first asked for; any thread.
 */
final class MixableBoxes {

    private static final double EDGE = 4;
    private static final int ACROSS_L = 27;
    private static final int ACROSS_AB = 66;
    private static final double LEAST_AB = -130;
    private static final int CORNERS = 8;

    private static final double[] STAYS = {};
    private static final double[] WORKED_OUT = {0};

    /** By how much the light at each corner gives way: three numbers, or {@link #STAYS}. */
    private final AtomicReferenceArray<double[]> corners = new AtomicReferenceArray<>(ACROSS_L * ACROSS_AB * ACROSS_AB);
    /** What the corners of each box give way, {@link #STAYS} or {@link #WORKED_OUT}. */
    private final AtomicReferenceArray<double[]> boxes = new AtomicReferenceArray<>(ACROSS_L * ACROSS_AB * ACROSS_AB);

    private final Supplier<Mixture> mixtures;

    MixableBoxes(Supplier<Mixture> mixtures) {
        this.mixtures = mixtures;
    }

    Looking looking() {
        return new Looking(mixtures.get());
    }

    /** Looks up one after the other. Not safe for several threads. */
    final class Looking {

        private final Mixture mixture;
        private final double[] lab = new double[3];

        Looking(Mixture mixture) {
            this.mixture = mixture;
        }

        /** Lets the light of a cell give way. @param light red, green and blue by cell */
        void mix(double[][] light, int cell) {
            LabConversion.of(light[0][cell], light[1][cell], light[2][cell], lab);
            double l = lab[0] / EDGE;
            double a = (lab[1] - LEAST_AB) / EDGE;
            double b = (lab[2] - LEAST_AB) / EDGE;
            int atL = (int) Math.floor(l);
            int atA = (int) Math.floor(a);
            int atB = (int) Math.floor(b);
            boolean within = atL >= 0
                    && atL < ACROSS_L - 1
                    && atA >= 0
                    && atA < ACROSS_AB - 1
                    && atB >= 0
                    && atB < ACROSS_AB - 1;
            double[] box = within ? box(atL, atA, atB) : WORKED_OUT;
            if (box == STAYS) {
                return;
            }
            if (box != WORKED_OUT) {
                giveWay(light, cell, box, l - atL, a - atA, b - atB);
            } else if (!mixture.mix(light[0][cell], light[1][cell], light[2][cell])) {
                light[0][cell] = mixture.mixedRed;
                light[1][cell] = mixture.mixedGreen;
                light[2][cell] = mixture.mixedBlue;
            }
        }

        private double[] box(int atL, int atA, int atB) {
            int at = (atL * ACROSS_AB + atA) * ACROSS_AB + atB;
            double[] known = boxes.get(at);
            if (known == null) {
                known = corners(atL, atA, atB);
                boxes.set(at, known);
            }
            return known;
        }

        private double[] corners(int atL, int atA, int atB) {
            double[] all = new double[3 * CORNERS];
            int outside = 0;
            for (int i = 0; i < CORNERS; i++) {
                double[] corner = corner(atL + (i & 1), atA + (i >> 1 & 1), atB + (i >> 2));
                if (corner != STAYS) {
                    System.arraycopy(corner, 0, all, 3 * i, 3);
                    outside++;
                }
            }
            if (outside == CORNERS) {
                return all;
            }
            return outside == 0 ? STAYS : WORKED_OUT;
        }

        private double[] corner(int atL, int atA, int atB) {
            int at = (atL * ACROSS_AB + atA) * ACROSS_AB + atB;
            double[] known = corners.get(at);
            if (known == null) {
                LinearRgb there = new Lab(atL * EDGE, LEAST_AB + atA * EDGE, LEAST_AB + atB * EDGE)
                        .xyzD65()
                        .linearRgb();
                boolean stays = mixture.mix(there.red(), there.green(), there.blue());
                known = stays
                        ? STAYS
                        : new double[] {
                            mixture.mixedRed - there.red(),
                            mixture.mixedGreen - there.green(),
                            mixture.mixedBlue - there.blue()
                        };
                corners.set(at, known);
            }
            return known;
        }
    }

    private static void giveWay(double[][] light, int cell, double[] corners, double l, double a, double b) {
        for (int i = 0; i < CORNERS; i++) {
            double share = ((i & 1) == 0 ? 1 - l : l) * ((i >> 1 & 1) == 0 ? 1 - a : a) * ((i >> 2) == 0 ? 1 - b : b);
            light[0][cell] += share * corners[3 * i];
            light[1][cell] += share * corners[3 * i + 1];
            light[2][cell] += share * corners[3 * i + 2];
        }
    }
}
