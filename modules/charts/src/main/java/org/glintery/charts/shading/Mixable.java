package org.glintery.charts.shading;

import java.util.stream.IntStream;
import org.glintery.charts.picture.LightGrid;

/**
 * What drills can show by lying side by side: brings wanted colours that no mixture gives to the mixture that looks most
 * like them. Errors that are handed on then never chase what can't be reached, which would pull the neighbours off. Any
 * thread.
 */
final class Mixable {

    private final double[] red;
    private final double[] green;
    private final double[] blue;

    Mixable(DrillColours colours) {
        int[] outer = outermost(colours);
        red = IntStream.of(outer).mapToDouble(drill -> colours.red[drill]).toArray();
        green = IntStream.of(outer).mapToDouble(drill -> colours.green[drill]).toArray();
        blue = IntStream.of(outer).mapToDouble(drill -> colours.blue[drill]).toArray();
    }

    /** Those that no mixture of others gives; in mixtures the others are not needed. */
    private static int[] outermost(DrillColours colours) {
        boolean[] inner = new boolean[colours.size()];
        for (int drill = 0; drill < inner.length; drill++) {
            int one = drill;
            int[] others = IntStream.range(0, inner.length)
                    .filter(other -> other != one && !inner[other])
                    .toArray();
            inner[drill] = others.length > 0
                    && of(colours, others).mix(colours.red[drill], colours.green[drill], colours.blue[drill]);
        }
        return IntStream.range(0, inner.length).filter(drill -> !inner[drill]).toArray();
    }

    private static Mixture of(DrillColours colours, int[] drills) {
        return new Mixture(
                IntStream.of(drills).mapToDouble(drill -> colours.red[drill]).toArray(),
                IntStream.of(drills).mapToDouble(drill -> colours.green[drill]).toArray(),
                IntStream.of(drills).mapToDouble(drill -> colours.blue[drill]).toArray());
    }

    /** The same grid in mixtures of the drills. */
    LightGrid mixed(LightGrid wanted) {
        MixableBoxes boxes = new MixableBoxes(() -> new Mixture(red, green, blue));
        double[][] light = {wanted.channel(0), wanted.channel(1), wanted.channel(2)};
        IntStream.range(0, wanted.rows()).parallel().forEach(row -> {
            MixableBoxes.Looking looking = boxes.looking();
            for (int cell = row * wanted.columns(); cell < (row + 1) * wanted.columns(); cell++) {
                if (!wanted.isBlank(cell)) {
                    looking.mix(light, cell);
                }
            }
        });
        return LightGrid.of(wanted.columns(), wanted.rows(), light, wanted::isBlank);
    }
}
