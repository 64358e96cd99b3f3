package org.glintery.charts.palette;

import java.util.stream.IntStream;
import org.glintery.charts.picture.LightGrid;
import org.glintery.charts.shading.LabGrid;
import org.glintery.colour.Ciede2000;
import org.glintery.colour.Lab;

/**
 * The k colours of a card that do a picture best: those with which the mean CIEDE2000 between a cell and the nearest of
 * them is smallest, as far as exchanges of one for one find. Any thread.
 */
public final class PaletteChoice {

    private PaletteChoice() {}

    /**
     * Places in the card, rising.
     *
     * @param card colours that may be chosen
     * @param pinned for each of them whether it is chosen in any case
     * @param k how many, at least one and at least as many as are pinned; all when the card has no more
     */
    public static int[] best(LightGrid wanted, LabGrid lab, Lab[] card, boolean[] pinned, int k) {
        if (k >= card.length) {
            return IntStream.range(0, card.length).toArray();
        }
        ColourCrowd crowd = ColourCrowd.of(wanted, lab);
        float[][] distance = new float[crowd.size()][card.length];
        IntStream.range(0, crowd.size()).parallel().forEach(group -> {
            Lab colour = new Lab(crowd.l[group], crowd.a[group], crowd.b[group]);
            for (int i = 0; i < card.length; i++) {
                distance[group][i] = (float) (crowd.cells[group] * Ciede2000.difference(colour, card[i]));
            }
        });
        return new Medoids(distance, pinned, k).chosen();
    }
}
