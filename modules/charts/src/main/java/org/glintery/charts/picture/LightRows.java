package org.glintery.charts.picture;

/** The pixels of a picture as light. Any thread. */
interface LightRows {

    /**
     * Adds the averages of one row of pixels, as light in the picture's own primaries.
     *
     * @param spans which pixels belong to which cell
     * @param weight of the row
     * @param sums by cell: red, green, blue, weighted by how opaque the pixels are, and the opaqueness itself
     */
    void add(int row, Spans spans, double weight, LightSums sums);
}
