package org.glintery.charts.palette;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * What no choice of k candidates can come below: the Lagrangian bound of the k-median problem, raised by subgradients
 * (Cornuejols, Fisher, Nemhauser, Management Science 23(8):789-810, 1977). Any prices give a bound that holds.
 */
final class MedoidBound {

    private static final int STEPS = 250;

    private MedoidBound() {}

    /** @param distance by client, then candidate @param reached what some choice comes to, for the length of the steps */
    static double of(float[][] distance, int k, double reached) {
        double[] price = new double[distance.length];
        for (int client = 0; client < price.length; client++) {
            float[] rising = distance[client].clone();
            Arrays.sort(rising);
            price[client] = rising[5];
        }
        double bound = 0;
        double pace = 1;
        for (int step = 0; step < STEPS; step++) {
            int[] open = open(distance, price, k);
            double value = value(distance, price, open);
            bound = Math.max(bound, value);
            double[] slope = new double[price.length];
            double squares = 0;
            for (int client = 0; client < price.length; client++) {
                slope[client] = 1;
                for (int candidate : open) {
                    slope[client] -= distance[client][candidate] < price[client] ? 1 : 0;
                }
                squares += slope[client] * slope[client];
            }
            if (squares == 0) {
                return bound;
            }
            double length = pace * (1.001 * reached - value) / squares;
            for (int client = 0; client < price.length; client++) {
                price[client] = Math.max(0, price[client] + length * slope[client]);
            }
            pace = step % 30 == 29 ? pace / 1.5 : pace;
        }
        return bound;
    }

    /** Those that gain most at these prices. */
    private static int[] open(float[][] distance, double[] price, int k) {
        double[] gain = new double[distance[0].length];
        for (int client = 0; client < price.length; client++) {
            for (int candidate = 0; candidate < gain.length; candidate++) {
                gain[candidate] += Math.min(0, distance[client][candidate] - price[client]);
            }
        }
        return IntStream.range(0, gain.length)
                .boxed()
                .sorted(Comparator.comparingDouble(candidate -> gain[candidate]))
                .limit(k)
                .mapToInt(Integer::intValue)
                .toArray();
    }

    private static double value(float[][] distance, double[] price, int[] open) {
        double value = 0;
        for (int client = 0; client < price.length; client++) {
            value += price[client];
            for (int candidate : open) {
                value += Math.min(0, distance[client][candidate] - price[client]);
            }
        }
        return value;
    }
}
