package org.glintery.charts.shading;

import org.glintery.charts.picture.LightGrid;

/**
 * A chart while its drills are exchanged one by one, each time for the one that lowers the energy most. The change of the
 * energy is known exactly before each move, so that it never rises. Cells in rows that lie more than {@link #APART} apart
 * may be worked on by several threads.
 */
final class SearchedCells {

    /** Rows between cells that do not touch each other's numbers. */
    static final int APART = 2 * SeenError.REACH;

    /** Less than this is rounding. */
    private static final double LEAST_GAIN = 1e-9;

    /** Hears of each move. */
    interface Moves {
        void moved(int cell, int from, int to, double change);
    }

    private final LightGrid wanted;
    private final DrillColours colours;
    private final LabGrid lab;
    private final CandidateDrills candidates;
    private final EnergyWeights weights;
    private final SeenError seen;
    private final int[] drills;
    private final boolean[] settled;
    private final Moves moves;
    private final DrillsLeft left;

    /** @param drills where it starts; they are changed */
    SearchedCells(
            LightGrid wanted,
            DrillColours colours,
            CandidateDrills candidates,
            LabGrid lab,
            EnergyWeights weights,
            int[] drills,
            Moves moves,
            DrillsLeft left) {
        this.wanted = wanted;
        this.colours = colours;
        this.candidates = candidates;
        this.lab = lab;
        this.weights = weights;
        this.drills = drills;
        this.moves = moves;
        this.left = left;
        seen = weights.viewing() == 0 ? null : new SeenError(wanted, colours, drills);
        settled = new boolean[drills.length];
    }

    /** A pass over some rows; gives how many drills were exchanged. @param straysOnly whether all others stay */
    int pass(int firstRow, int lastRow, boolean straysOnly) {
        Surroundings surroundings = new Surroundings(wanted.columns(), wanted.rows(), drills);
        double[] asked = new double[3];
        int moved = 0;
        for (int row = firstRow; row <= lastRow; row++) {
            for (int column = 0; column < wanted.columns(); column++) {
                int cell = row * wanted.columns() + column;
                if (!settled[cell] && !wanted.isBlank(cell)) {
                    settled[cell] = true;
                    moved += exchange(row, column, surroundings, asked, straysOnly) ? 1 : 0;
                }
            }
        }
        return moved;
    }

    private boolean exchange(int row, int column, Surroundings surroundings, double[] asked, boolean straysOnly) {
        int cell = row * wanted.columns() + column;
        int now = drills[cell];
        if (weights.stray() > 0) {
            surroundings.about(row, column);
            if (straysOnly && !surroundings.isStray(now)) {
                return false;
            }
        }
        if (seen != null) {
            seen.ask(row, column, asked);
        }
        double byItself = byItself(cell, now);
        int strays = weights.stray() > 0 ? surroundings.strays(now) : 0;
        int[] list = candidates.of(cell);
        double best = -LEAST_GAIN;
        int to = now;
        for (int place = 0; place < list.length; place++) {
            int drill = list[place];
            if (drill == now || !left.has(drill)) {
                continue;
            }
            double change = weights.cell() * (candidates.squared(cell, place) - byItself);
            if (weights.stray() > 0) {
                change += weights.stray() * (surroundings.strays(drill) - strays);
            }
            if (seen != null) {
                change += weights.viewing()
                        * seen.change(
                                cell,
                                asked,
                                colours.red[drill] - colours.red[now],
                                colours.green[drill] - colours.green[now],
                                colours.blue[drill] - colours.blue[now]);
            }
            if (change < best) {
                best = change;
                to = drill;
            }
        }
        if (to == now) {
            return false;
        }
        lay(row, column, now, to);
        moves.moved(cell, now, to, best);
        return true;
    }

    /** Rounded as the candidates' are, so that the energy and its changes agree to the last. */
    private double byItself(int cell, int drill) {
        double difference = colours.difference(drill, lab, cell);
        return (float) (difference * difference);
    }

    private void lay(int row, int column, int from, int to) {
        drills[row * wanted.columns() + column] = to;
        left.exchange(from, to);
        if (seen != null) {
            seen.move(
                    row,
                    column,
                    colours.red[to] - colours.red[from],
                    colours.green[to] - colours.green[from],
                    colours.blue[to] - colours.blue[from]);
        }
        int reach = seen == null ? 2 : SeenError.REACH;
        for (int y = Math.max(0, row - reach); y <= Math.min(wanted.rows() - 1, row + reach); y++) {
            for (int x = Math.max(0, column - reach); x <= Math.min(wanted.columns() - 1, column + reach); x++) {
                settled[y * wanted.columns() + x] = false;
            }
        }
    }

    /** The energy as it stands, counted afresh from the cells. */
    double energy() {
        Surroundings surroundings = new Surroundings(wanted.columns(), wanted.rows(), drills);
        double sum = seen == null ? 0 : weights.viewing() * seen.sum();
        for (int cell = 0; cell < drills.length; cell++) {
            if (!wanted.isBlank(cell)) {
                sum += weights.cell() * byItself(cell, drills[cell]);
                surroundings.about(cell / wanted.columns(), cell % wanted.columns());
                sum += surroundings.isStray(drills[cell]) ? weights.stray() : 0;
            }
        }
        return sum;
    }
}
