package org.glintery.charts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.glintery.api.charts.Chart;
import org.glintery.api.charts.ChartLine;
import org.glintery.api.charts.Grid;
import org.glintery.charts.shading.Shader;
import org.glintery.charts.symbols.SymbolDealing;

/** Counts the drills of a chart: those that are used become its lines, the most used first. */
final class ChartLines {

    private ChartLines() {}

    /** @param drills by cell the place among the colours, or {@link Shader#NONE} */
    static Chart counted(Grid grid, List<CardColour> colours, int[] drills) {
        long[] counts = new long[colours.size()];
        for (int drill : drills) {
            if (drill != Shader.NONE) {
                counts[drill]++;
            }
        }
        List<Integer> used = IntStream.range(0, counts.length)
                .filter(drill -> counts[drill] > 0)
                .boxed()
                .sorted(Comparator.comparingLong(drill -> -counts[drill]))
                .toList();
        List<String> symbols = SymbolDealing.dealt(used.size());
        int[] lineOf = new int[counts.length];
        List<ChartLine> lines = new ArrayList<>();
        for (int drill : used) {
            lineOf[drill] = lines.size();
            CardColour colour = colours.get(drill);
            lines.add(new ChartLine(
                    symbols.get(lines.size()), colour.code(), colour.colour().hex(), counts[drill]));
        }
        int[] cells = new int[drills.length];
        for (int cell = 0; cell < cells.length; cell++) {
            cells[cell] = drills[cell] == Shader.NONE ? Chart.NO_DRILL : lineOf[drills[cell]];
        }
        return new Chart(grid, lines, cells);
    }
}
