package org.glintery.colour;

import java.util.List;

/** Colours in Lab, laid out for many comparisons. */
final class ColourSet {

    final double[] l;
    final double[] a;
    final double[] b;
    final double[] chroma;
    /** What {@link DifferenceBound#lightnessWeight} gives for each. */
    final double[] lightnessWeight;

    ColourSet(List<Lab> colours) {
        l = colours.stream().mapToDouble(Lab::l).toArray();
        a = colours.stream().mapToDouble(Lab::a).toArray();
        b = colours.stream().mapToDouble(Lab::b).toArray();
        chroma = colours.stream().mapToDouble(Lab::chroma).toArray();
        lightnessWeight = colours.stream()
                .mapToDouble(colour -> DifferenceBound.lightnessWeight(colour.l()))
                .toArray();
    }

    int size() {
        return l.length;
    }

    double difference(int index, double toL, double toA, double toB) {
        return difference(index, toL, toA, toB, Math.sqrt(toA * toA + toB * toB));
    }

    double difference(int index, double toL, double toA, double toB, double toChroma) {
        return Ciede2000.difference(toL, toA, toB, toChroma, l[index], a[index], b[index], chroma[index]);
    }

    /** The square of what {@link #difference} is at least; the weight is that of the lightness {@code toL}. */
    double leastSquared(int index, double toL, double toA, double toB, double toChroma, double toWeight) {
        return DifferenceBound.squared(
                toL - l[index],
                toA - a[index],
                toB - b[index],
                Math.min(toWeight, lightnessWeight[index]),
                (toChroma + chroma[index]) / 2,
                toB >= 0 && b[index] >= 0);
    }
}
