package org.glintery.planning;

import org.glintery.api.Preview;

/** What stands before the artwork, and its weight. */
@Preview(since = "1.0")
public enum Glazing {
    /** 2500 kg/m3: EN 572-1. */
    GLASS(2_500),
    /** 1190 kg/m3: ISO 7823-1, from memory. */
    ACRYLIC(1_190);

    private final double densityKgM3;

    Glazing(double densityKgM3) {
        this.densityKgM3 = densityKgM3;
    }

    /** Area times thickness times density; one square metre of glass 2 mm thick weighs 5 kg. */
    public double massKg(long widthUm, long heightUm, long thicknessUm) {
        return areaM2(widthUm, heightUm) * (thicknessUm / 1e6) * densityKgM3;
    }

    public static double areaM2(long widthUm, long heightUm) {
        return (widthUm / 1e6) * (heightUm / 1e6);
    }
}
