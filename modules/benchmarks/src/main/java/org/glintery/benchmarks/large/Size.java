package org.glintery.benchmarks.large;

/** How much a workshop holds. @param lines of a legend */
public record Size(String name, int kits, int lines, int sittings, int movements) {

    /** Ten times what a keen maker has. */
    public static final Size FULL = new Size("full", 5_000, 40, 50_000, 500_000);

    public static final Size TENTH = new Size("tenth", 500, 40, 5_000, 50_000);

    public static final Size EMPTY = new Size("empty", 0, 0, 0, 0);

    public int legendLines() {
        return kits * lines;
    }
}
