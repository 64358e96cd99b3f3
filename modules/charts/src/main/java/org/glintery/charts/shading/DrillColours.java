package org.glintery.charts.shading;

import java.util.List;
import org.glintery.colour.Ciede2000;
import org.glintery.colour.Lab;
import org.glintery.colour.LinearRgb;
import org.glintery.colour.NearestColours;
import org.glintery.colour.Srgb;

/** The colours of the drills that may be laid, each at its place in the list. Any thread. */
public final class DrillColours {

    final double[] red;
    final double[] green;
    final double[] blue;
    final double[] l;
    final double[] a;
    final double[] b;
    final double[] chroma;
    private final NearestColours nearest;

    /** @throws IllegalArgumentException when there is none */
    public DrillColours(List<Srgb> colours) {
        List<LinearRgb> light = colours.stream().map(Srgb::linear).toList();
        List<Lab> lab = colours.stream().map(Srgb::lab).toList();
        red = light.stream().mapToDouble(LinearRgb::red).toArray();
        green = light.stream().mapToDouble(LinearRgb::green).toArray();
        blue = light.stream().mapToDouble(LinearRgb::blue).toArray();
        l = lab.stream().mapToDouble(Lab::l).toArray();
        a = lab.stream().mapToDouble(Lab::a).toArray();
        b = lab.stream().mapToDouble(Lab::b).toArray();
        chroma = lab.stream().mapToDouble(Lab::chroma).toArray();
        nearest = new NearestColours(lab);
    }

    public int size() {
        return l.length;
    }

    /** Linear light of a drill. @param channel 0 to 2 for red, green and blue */
    public double channel(int drill, int channel) {
        return (channel == 0 ? red : channel == 1 ? green : blue)[drill];
    }

    /** The place of the one that is nearest under CIEDE2000. */
    public int nearest(double toL, double toA, double toB) {
        return nearest.nearest(toL, toA, toB);
    }

    /** CIEDE2000 between a drill and a colour in Lab. */
    public double difference(int drill, double toL, double toA, double toB) {
        return Ciede2000.difference(
                toL, toA, toB, Math.sqrt(toA * toA + toB * toB), l[drill], a[drill], b[drill], chroma[drill]);
    }

    /** CIEDE2000 between a drill and what a cell should look like. */
    public double difference(int drill, LabGrid grid, int cell) {
        return Ciede2000.difference(
                grid.l[cell],
                grid.a[cell],
                grid.b[cell],
                grid.chroma[cell],
                l[drill],
                a[drill],
                b[drill],
                chroma[drill]);
    }
}
