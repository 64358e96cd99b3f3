package org.glintery.charts.picture;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/** How the numbers of a channel stand for light: both from 0 to 1. */
interface ToneCurve extends DoubleUnaryOperator {

    /** That of IEC 61966-2-1. */
    ToneCurve SRGB = value -> value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);

    /** By the tag of a colour profile: ICC.1:2022, 10.6 curveType and 10.18 parametricCurveType; empty for others. */
    static Optional<ToneCurve> ofTag(ByteBuffer tag) {
        byte[] type = new byte[4];
        tag.get(0, type);
        return switch (new String(type, StandardCharsets.ISO_8859_1)) {
            case "curv" -> curve(tag);
            case "para" -> parametric(tag);
            default -> Optional.empty();
        };
    }

    private static Optional<ToneCurve> curve(ByteBuffer tag) {
        int entries = tag.getInt(8);
        if (entries == 0) {
            return Optional.of(value -> value);
        }
        if (entries == 1) {
            double gamma = (tag.getShort(12) & 0xFFFF) / 256.0;
            return Optional.of(value -> Math.pow(value, gamma));
        }
        double[] table = new double[entries];
        for (int i = 0; i < entries; i++) {
            table[i] = (tag.getShort(12 + 2 * i) & 0xFFFF) / 65535.0;
        }
        return Optional.of(value -> {
            double place = value * (table.length - 1);
            int below = Math.min(table.length - 2, (int) place);
            return table[below] + (place - below) * (table[below + 1] - table[below]);
        });
    }

    private static Optional<ToneCurve> parametric(ByteBuffer tag) {
        int function = tag.getShort(8);
        int[] parameters = {1, 3, 4, 5, 7};
        if (function < 0 || function >= parameters.length) {
            return Optional.empty();
        }
        double[] p = new double[7];
        for (int i = 0; i < parameters[function]; i++) {
            p[i] = tag.getInt(12 + 4 * i) / 65536.0;
        }
        double g = p[0];
        double a = function == 0 ? 1 : p[1];
        double b = p[2];
        double c = function < 3 ? 0 : p[3];
        double from = function == 0 ? 0 : function < 3 ? -b / a : p[4];
        double above = function == 2 ? p[3] : p[5];
        double below = function == 2 ? p[3] : p[6];
        return Optional.of(value -> value >= from ? Math.pow(a * value + b, g) + above : c * value + below);
    }

    /** The light at each of the numbers from 0 to the highest. */
    default double[] table(int numbers) {
        double[] light = new double[numbers];
        for (int i = 0; i < numbers; i++) {
            light[i] = Math.max(0, Math.min(1, applyAsDouble(i / (numbers - 1.0))));
        }
        return light;
    }
}
