package org.glintery.colour;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.glintery.api.Stable;

/**
 * How a colour looks to someone with a colour-vision deficiency: Machado, Oliveira and Fernandes, "A physiologically-based
 * model for simulation of color vision deficiency", IEEE TVCG 15(6):1291-1298, 2009. The published matrices stand at
 * steps of a tenth; between them the entries are interpolated. They act on linear light, not on encoded values.
 */
@Stable
public enum ColourVision {
    /** Long-wave (red) cones shifted or missing. */
    PROTAN("Protanomaly"),
    /** Middle-wave (green) cones shifted or missing. */
    DEUTAN("Deuteranomaly"),
    /** Short-wave (blue) cones; the paper itself calls this one an approximation. */
    TRITAN("Tritanomaly");

    private static final int STEPS = 10;

    private final String published;

    ColourVision(String published) {
        this.published = published;
    }

    /**
     * The colour as seen.
     *
     * @param severity 0 for usual colour vision to 1 for a missing kind of cone
     * @throws IllegalArgumentException for a severity outside 0 to 1
     */
    public Srgb seen(Srgb colour, double severity) {
        return seen(colour.linear(), severity).srgb();
    }

    /** As {@link #seen(Srgb, double)}, on light; it may leave the range that a screen shows. */
    public LinearRgb seen(LinearRgb light, double severity) {
        if (!(severity >= 0 && severity <= 1)) {
            throw new IllegalArgumentException("a severity is 0 to 1: " + severity);
        }
        List<Matrix3> steps = Published.MATRICES.get(this);
        int below = Math.min(STEPS - 1, (int) (severity * STEPS));
        return steps.get(below)
                .towards(steps.get(below + 1), severity * STEPS - below)
                .times(light.red(), light.green(), light.blue(), LinearRgb::new);
    }

    /** Read once, when first needed. */
    private static final class Published {
        private static final Map<ColourVision, List<Matrix3>> MATRICES = read();

        private static Map<ColourVision, List<Matrix3>> read() {
            Map<ColourVision, List<Matrix3>> matrices = new EnumMap<>(ColourVision.class);
            List<String[]> rows = Table.rows("machado2009_cvd_matrices.csv");
            for (ColourVision vision : values()) {
                List<Matrix3> steps = new ArrayList<>();
                rows.stream().filter(row -> row[0].equals(vision.published)).forEach(row -> steps.add(matrix(row)));
                if (steps.size() != STEPS + 1) {
                    throw new IllegalStateException(vision + " has " + steps.size() + " matrices");
                }
                matrices.put(vision, List.copyOf(steps));
            }
            return matrices;
        }

        private static Matrix3 matrix(String[] row) {
            double[] m = new double[9];
            for (int i = 0; i < m.length; i++) {
                m[i] = Double.parseDouble(row[i + 2]);
            }
            return Matrix3.rows(m[0], m[1], m[2], m[3], m[4], m[5], m[6], m[7], m[8]);
        }
    }
}
