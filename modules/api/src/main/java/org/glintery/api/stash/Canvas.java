package org.glintery.api.stash;

import java.util.Optional;
import org.glintery.api.Stable;

/**
 * The sheet under the drills. Drilled area and cloth are two sizes. All lengths in millimetres.
 *
 * @param pitchMm from cell to cell, measured (count 20 cells, divide); never inferred from the drill's shape
 * @param columns cells across
 * @param rows cells down
 */
@Stable
public record Canvas(
        Optional<Double> drilledWidthMm,
        Optional<Double> drilledHeightMm,
        Optional<Double> clothWidthMm,
        Optional<Double> clothHeightMm,
        Optional<Double> pitchMm,
        Optional<Integer> columns,
        Optional<Integer> rows) {

    public static final Canvas NOT_SAID = new Canvas(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());

    public static Canvas drilled(double widthMm, double heightMm) {
        return new Canvas(
                Optional.of(widthMm),
                Optional.of(heightMm),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }
}
