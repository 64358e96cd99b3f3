package org.glintery.api.charts;

import org.glintery.api.Preview;
import org.glintery.api.workshop.Picture;

/**
 * What a design was made from.
 *
 * @param quarterTurns to the right, before it was cropped
 * @param crop of the turned picture; what was left was fitted to the grid
 */
@Preview(since = "1.0")
public record DesignPicture(Picture picture, int quarterTurns, Crop crop) {}
