package org.glintery.demo.drills;

import java.util.Set;

/**
 * Nine sections of unequal size, three under each other in three strips, numbered down the first, up the second and down the
 * third.
 *
 * @param done sections that are laid, by number from 1
 * @param begun the section of which some colours are laid, 0 for none
 */
public record SectionBySection(Set<Integer> done, int begun) implements Laying {
    private static final double[] STRIPS = {0.36, 0.70};
    private static final double[][] CUTS = {{0.24, 0.62}, {0.38, 0.72}, {0.30, 0.56}};

    @Override
    public boolean laid(DrillGrid grid, int x, int y) {
        int section = section((x + 0.5) / grid.columns(), (y + 0.5) / grid.rows());
        return done.contains(section) || section == begun && grid.at(x, y) % 3 == 0;
    }

    private static int section(double x, double y) {
        int strip = x < STRIPS[0] ? 0 : x < STRIPS[1] ? 1 : 2;
        int down = y < CUTS[strip][0] ? 0 : y < CUTS[strip][1] ? 1 : 2;
        return 3 * strip + (strip == 1 ? 2 - down : down) + 1;
    }
}
