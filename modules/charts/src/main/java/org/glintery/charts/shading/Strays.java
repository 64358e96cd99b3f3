package org.glintery.charts.shading;

import java.util.stream.IntStream;

/** Counts strays: drills with none of their kind in the eight cells about them, which take long to lay. */
public final class Strays {

    private Strays() {}

    public static long count(int columns, int rows, int[] drills) {
        return IntStream.range(0, rows)
                .parallel()
                .mapToLong(row -> {
                    Surroundings surroundings = new Surroundings(columns, rows, drills);
                    return IntStream.range(0, columns)
                            .filter(column -> isStray(surroundings, row, column, drills[row * columns + column]))
                            .count();
                })
                .sum();
    }

    private static boolean isStray(Surroundings surroundings, int row, int column, int drill) {
        if (drill == Shader.NONE) {
            return false;
        }
        surroundings.about(row, column);
        return surroundings.isStray(drill);
    }
}
