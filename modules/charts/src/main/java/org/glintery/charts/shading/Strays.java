package org.glintery.charts.shading;

import java.util.stream.IntStream;

/** Counts strays: drills with none of their kind in the eight cells about them, which take long to lay. */
public final class Strays {

    private Strays() {}

    public static long count(int columns, int rows, int[] drills) {
        return IntStream.range(0, rows)
                .parallel()
                .mapToLong(row -> {
                    long strays = 0;
                    for (int column = 0; column < columns; column++) {
                        strays += isStray(columns, rows, drills, row, column) ? 1 : 0;
                    }
                    return strays;
                })
                .sum();
    }

    private static boolean isStray(int columns, int rows, int[] drills, int row, int column) {
        int cell = row * columns + column;
        int drill = drills[cell];
        if (drill == Shader.NONE) {
            return false;
        }
        for (int y = Math.max(0, row - 1); y <= Math.min(rows - 1, row + 1); y++) {
            for (int x = Math.max(0, column - 1); x <= Math.min(columns - 1, column + 1); x++) {
                int near = y * columns + x;
                if (near != cell && drills[near] == drill) {
                    return false;
                }
            }
        }
        return true;
    }
}
