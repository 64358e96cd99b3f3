package org.glintery.workbench.sheet;

import java.awt.geom.Rectangle2D;
import org.glintery.api.Preview;

/**
 * Which part of a chart is seen, and how large. Immutable; any thread.
 *
 * @param cellPx the side of a cell on the screen, in pixels
 * @param left the column at the left edge of the view, in cells and fractions of one
 * @param top the row at the upper edge
 */
@Preview(since = "1.0")
public record SheetView(double cellPx, double left, double top) {
    /** The smallest side of a cell: a chart of 4 000 cells then is 200 pixels wide. */
    public static final double LEAST_CELL_PX = 0.05;

    /** The largest side of a cell, at which facets and coating are plain to see. */
    public static final double MOST_CELL_PX = 96;

    private static final double MARGIN_PX = 24;

    /** The whole chart in the middle of a view of that size. */
    public static SheetView fitting(SheetCells cells, double widthPx, double heightPx) {
        double side = Math.min(
                Math.max(1, widthPx - 2 * MARGIN_PX) / cells.columns(),
                Math.max(1, heightPx - 2 * MARGIN_PX) / cells.rows());
        double size = bounded(side);
        return new SheetView(size, (cells.columns() - widthPx / size) / 2, (cells.rows() - heightPx / size) / 2);
    }

    /** Larger or smaller, with what lies under the point staying there. */
    public SheetView zoomedAt(double xPx, double yPx, double factor) {
        double size = bounded(cellPx * factor);
        return new SheetView(size, left + xPx / cellPx - xPx / size, top + yPx / cellPx - yPx / size);
    }

    /** Moved as if the chart had been dragged by that much. */
    public SheetView dragged(double dxPx, double dyPx) {
        return new SheetView(cellPx, left - dxPx / cellPx, top - dyPx / cellPx);
    }

    /** Moved back so that some of the chart stays in the middle of the view. */
    public SheetView kept(SheetCells cells, double widthPx, double heightPx) {
        double halfWide = widthPx / cellPx / 2;
        double halfHigh = heightPx / cellPx / 2;
        return new SheetView(
                cellPx,
                Math.max(-halfWide, Math.min(cells.columns() - halfWide, left)),
                Math.max(-halfHigh, Math.min(cells.rows() - halfHigh, top)));
    }

    /** The column under a point of the view; may lie off the chart. */
    public int columnAt(double xPx) {
        return (int) Math.floor(left + xPx / cellPx);
    }

    /** The row under a point of the view; may lie off the chart. */
    public int rowAt(double yPx) {
        return (int) Math.floor(top + yPx / cellPx);
    }

    /** The same part of the chart counted in pixels of another size. */
    SheetView scaled(double scale) {
        return new SheetView(cellPx * scale, left, top);
    }

    private static double bounded(double side) {
        return Math.max(LEAST_CELL_PX, Math.min(MOST_CELL_PX, side));
    }

    /** Where a block of cells lies in the view, in pixels. */
    public Rectangle2D boundsOf(int column, int row, int columns, int rows) {
        return new Rectangle2D.Double((column - left) * cellPx, (row - top) * cellPx, columns * cellPx, rows * cellPx);
    }
}
