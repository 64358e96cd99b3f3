package org.glintery.records;

/**
 * What a reversal did beside moving whole drills. It is told in exports: undo takes back exactly what was done, which the
 * rules alone would not give again once a stocktake lies between.
 */
record Sides(long fromVariance, int fromUncounted, long toVariance, int toUncounted) {
    static Sides of(Effect effect) {
        return new Sides(effect.fromVariance(), effect.fromUncounted(), effect.toVariance(), effect.toUncounted());
    }

    /** The effect with these sides in place of its own. */
    Effect in(Effect effect) {
        return new Effect(
                effect.drill(),
                effect.from(),
                effect.to(),
                effect.count(),
                fromVariance,
                fromUncounted,
                toVariance,
                toUncounted);
    }
}
