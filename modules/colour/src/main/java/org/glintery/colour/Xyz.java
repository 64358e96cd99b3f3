package org.glintery.colour;

import org.glintery.api.Stable;

/** CIE 1931 tristimulus values with Y = 1 for white, under the white that the colour was made for. */
@Stable
public record Xyz(double x, double y, double z) {

    // The whites follow from the chromaticities x .3127, y .3290 and x .3457, y .3585 of CSS Color 4, section 18.
    public static final Xyz WHITE_D65 = new Xyz(0.3127 / 0.3290, 1, (1 - 0.3127 - 0.3290) / 0.3290);
    public static final Xyz WHITE_D50 = new Xyz(0.3457 / 0.3585, 1, (1 - 0.3457 - 0.3585) / 0.3585);

    /** The cone matrix of Bradford: Lam, 1985, as ICC.1:2022 annex E gives it. */
    private static final Matrix3 BRADFORD =
            Matrix3.rows(0.8951, 0.2664, -0.1614, -0.7502, 1.7135, 0.0367, 0.0389, -0.0685, 1.0296);

    private static final Matrix3 D65_TO_D50 = adaptation(WHITE_D65, WHITE_D50);
    private static final Matrix3 D50_TO_D65 = adaptation(WHITE_D50, WHITE_D65);

    private static Matrix3 adaptation(Xyz from, Xyz to) {
        Xyz coneFrom = BRADFORD.times(from.x, from.y, from.z, Xyz::new);
        Xyz coneTo = BRADFORD.times(to.x, to.y, to.z, Xyz::new);
        Matrix3 scale = Matrix3.diagonal(coneTo.x / coneFrom.x, coneTo.y / coneFrom.y, coneTo.z / coneFrom.z);
        return BRADFORD.inverse().times(scale).times(BRADFORD);
    }

    /** The colour under D50 that looks as this one does under D65, by Bradford's adaptation. */
    public Xyz fromD65ToD50() {
        return D65_TO_D50.times(x, y, z, Xyz::new);
    }

    /** The way back of {@link #fromD65ToD50}. */
    public Xyz fromD50ToD65() {
        return D50_TO_D65.times(x, y, z, Xyz::new);
    }

    /** Linear light of a screen, for a colour under D65. */
    public LinearRgb linearRgb() {
        return LinearRgb.of(this);
    }
}
