package org.glintery.api.charts;

import org.glintery.api.Stable;

/**
 * How near a chart comes to its picture, as mean and as what 95 of 100 cells do not exceed, in CIEDE2000.
 *
 * @param cellMean of each cell by itself
 * @param seenMean as seen from a distance: both blurred by a Gaussian of 1.5 cells in linear light with mirrored edges
 * @param strays the share of drills with none of their kind in the eight cells about them, 0 to 1
 */
@Stable
public record ChartFigures(double cellMean, double cell95, double seenMean, double seen95, double strays) {}
