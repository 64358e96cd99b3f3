package org.glintery.charts.file;

import org.glintery.api.JsonCodec;
import org.glintery.api.charts.Chart;

/**
 * A chart as JSON: columns, rows, lines with symbol, code, hex and drills, and cells as rows of places in the lines, -1
 * where there is no drill. Any thread.
 */
public final class ChartJson {

    private static final int USUAL_CELL_SIGNS = 4;

    private ChartJson() {}

    /** Written by hand, since a million cells would be too many objects. */
    public static String of(Chart chart, JsonCodec codec) {
        int columns = chart.grid().columns();
        int rows = chart.grid().rows();
        StringBuilder json = new StringBuilder(USUAL_CELL_SIGNS * chart.grid().cells());
        json.append("{\"columns\":").append(columns).append(",\"rows\":").append(rows);
        json.append(",\"lines\":").append(codec.compact(codec.toJson(chart.lines())));
        json.append(",\"cells\":[");
        for (int row = 0; row < rows; row++) {
            json.append(row == 0 ? "\n[" : ",\n[");
            for (int column = 0; column < columns; column++) {
                json.append(column == 0 ? "" : ",").append(chart.line(column, row));
            }
            json.append(']');
        }
        return json.append("]}\n").toString();
    }
}
