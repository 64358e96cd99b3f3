package org.glintery.api.charts;

import org.glintery.api.Stable;

/** A part of a picture as it is shown, each side as a share of the whole from 0 to 1. */
@Stable
public record Crop(double left, double top, double width, double height) {

    public static final Crop WHOLE = new Crop(0, 0, 1, 1);

    /** @throws IllegalArgumentException when it is empty or reaches beyond the picture */
    public Crop {
        boolean within = left >= 0 && top >= 0 && left + width <= 1 + 1e-9 && top + height <= 1 + 1e-9;
        if (!within || !(width > 0) || !(height > 0)) {
            throw new IllegalArgumentException(
                    "not a part of a picture: " + left + ", " + top + ", " + width + ", " + height);
        }
    }
}
