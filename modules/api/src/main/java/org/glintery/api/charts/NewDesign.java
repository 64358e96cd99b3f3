package org.glintery.api.charts;

import java.util.Optional;
import org.glintery.api.Preview;
import org.glintery.api.workshop.Blob;

/**
 * A design to be kept.
 *
 * @param cells of the design's grid
 * @param picture the bytes of the design's picture, unless they are in the workshop already
 */
@Preview(since = "1.0")
public record NewDesign(Design design, DesignCells cells, Optional<Blob> picture) {}
