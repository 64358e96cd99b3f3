package org.glintery.charts.shading;

import java.util.stream.IntStream;
import org.glintery.api.charts.Watch;
import org.glintery.charts.picture.LightGrid;
import org.glintery.charts.progress.Steps;

/**
 * Error diffusion (Floyd and Steinberg, Proc. SID 17(2):75-77, 1976) in linear light, each drill chosen by CIEDE2000, for
 * what the drills can show.
 *
 * <p>A cell waits for the one before it and for the three above. Blocks that lean to the left by a cell a row have all they
 * wait for in the block before them and in two of the band above; those on one slant are worked on side by side, and the
 * outcome does not depend on it.
 */
final class Diffused implements Shader {

    private static final int BAND_ROWS = 32;
    private static final int BLOCK_COLUMNS = 64;

    @Override
    public int[] shaded(LightGrid wanted, DrillColours colours, Watch watch) {
        DiffusedCells cells = new DiffusedCells(new Mixable(colours).mixed(wanted), colours);
        int bands = (wanted.rows() + BAND_ROWS - 1) / BAND_ROWS;
        int blocks = (wanted.columns() + BAND_ROWS + BLOCK_COLUMNS - 2) / BLOCK_COLUMNS;
        int slants = blocks + 2 * (bands - 1);
        Steps steps = new Steps(watch, slants);
        for (int slant = 0; slant < slants && steps.next(); slant++) {
            int onSlant = slant;
            int firstBand = Math.max(0, (slant - blocks + 2) / 2);
            int lastBand = Math.min(bands - 1, slant / 2);
            IntStream.rangeClosed(firstBand, lastBand)
                    .parallel()
                    .forEach(band -> diffuse(cells, wanted, band, onSlant - 2 * band));
        }
        steps.check();
        return cells.drills();
    }

    private static void diffuse(DiffusedCells cells, LightGrid wanted, int band, int block) {
        double[] lab = new double[3];
        int firstRow = band * BAND_ROWS;
        int lastRow = Math.min(wanted.rows(), firstRow + BAND_ROWS) - 1;
        for (int row = firstRow; row <= lastRow; row++) {
            int lean = row - firstRow;
            int from = Math.max(0, block * BLOCK_COLUMNS - lean);
            int to = Math.min(wanted.columns(), (block + 1) * BLOCK_COLUMNS - lean);
            for (int column = from; column < to; column++) {
                cells.choose(row, column, lab);
            }
        }
    }
}
