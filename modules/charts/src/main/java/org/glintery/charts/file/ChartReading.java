package org.glintery.charts.file;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.glintery.api.Json;
import org.glintery.api.JsonCodec;
import org.glintery.api.MalformedException;
import org.glintery.api.Result;
import org.glintery.api.charts.Chart;
import org.glintery.api.charts.ChartLine;
import org.glintery.api.charts.Grid;
import org.glintery.colour.Srgb;
import org.openide.util.NbBundle.Messages;

/** Reads a chart as {@link ChartJson} writes it. What it says of counts is not believed but counted. Any thread. */
@Messages({
    "# {0} - what is wrong",
    "ChartReading.notAChart=This is no chart that can be read: {0}. Nothing was changed; make it with chart make.",
    "ChartReading.notJson=it is not JSON",
    "# {0} - field",
    "ChartReading.missing=''{0}'' is missing or not as it should be",
    "ChartReading.size=it has too many cells or none",
    "ChartReading.cells=its rows of cells do not fit its columns, rows and lines"
})
public final class ChartReading {

    private final Json.Obj file;

    private ChartReading(Json.Obj file) {
        this.file = file;
    }

    /** Refused with {@code not-a-chart}. @param pitchMm from cell to cell, which the file does not say */
    public static Result<Chart> read(byte[] bytes, double pitchMm, JsonCodec codec) {
        try {
            Json json = codec.parse(new String(bytes, StandardCharsets.UTF_8));
            return json instanceof Json.Obj object
                    ? Result.ok(new ChartReading(object).chart(pitchMm))
                    : refused(Bundle.ChartReading_notJson());
        } catch (UnfitException e) {
            return refused(e.getMessage());
        } catch (MalformedException e) {
            return refused(Bundle.ChartReading_notJson());
        }
    }

    private static Result<Chart> refused(String what) {
        return Result.refused("not-a-chart", Bundle.ChartReading_notAChart(what));
    }

    private Chart chart(double pitchMm) throws UnfitException {
        int columns = whole(file.get("columns"), 1, Grid.MOST_CELLS, "columns");
        int rows = whole(file.get("rows"), 1, Grid.MOST_CELLS, "rows");
        if ((long) columns * rows > Grid.MOST_CELLS) {
            throw new UnfitException(Bundle.ChartReading_size());
        }
        List<Json> lines = list(file.get("lines"), "lines");
        int[] cells = cells(columns, rows, lines.size());
        long[] drills = new long[lines.size()];
        for (int cell : cells) {
            if (cell != Chart.NO_DRILL) {
                drills[cell]++;
            }
        }
        List<ChartLine> read = new ArrayList<>();
        for (Json line : lines) {
            read.add(line(line, drills[read.size()]));
        }
        return new Chart(new Grid(columns, rows, pitchMm), read, cells);
    }

    private static ChartLine line(Json json, long drills) throws UnfitException {
        Json.Obj line = json instanceof Json.Obj object ? object : Json.EMPTY;
        String code = line.text("code")
                .filter(text -> !text.isBlank())
                .orElseThrow(() -> new UnfitException(Bundle.ChartReading_missing("code")));
        String hex = line.text("hex")
                .flatMap(Srgb::parse)
                .map(Srgb::hex)
                .orElseThrow(() -> new UnfitException(Bundle.ChartReading_missing("hex")));
        return new ChartLine(line.text("symbol").orElse(""), code, hex, drills);
    }

    private int[] cells(int columns, int rows, int lines) throws UnfitException {
        List<Json> written = list(file.get("cells"), "cells");
        if (written.size() != rows || lines > Chart.MOST_LINES) {
            throw new UnfitException(Bundle.ChartReading_cells());
        }
        int[] cells = new int[columns * rows];
        int at = 0;
        for (Json row : written) {
            List<Json> one = list(Optional.of(row), "cells");
            if (one.size() != columns) {
                throw new UnfitException(Bundle.ChartReading_cells());
            }
            for (Json cell : one) {
                cells[at++] = whole(Optional.of(cell), Chart.NO_DRILL, lines - 1, "cells");
            }
        }
        return cells;
    }

    private static List<Json> list(Optional<Json> json, String name) throws UnfitException {
        if (json.isPresent() && json.get() instanceof Json.Arr list) {
            return list.items();
        }
        throw new UnfitException(Bundle.ChartReading_missing(name));
    }

    private static int whole(Optional<Json> json, int least, int most, String name) throws UnfitException {
        if (json.isPresent() && json.get() instanceof Json.Num number) {
            BigDecimal value = number.value();
            boolean within =
                    value.compareTo(BigDecimal.valueOf(least)) >= 0 && value.compareTo(BigDecimal.valueOf(most)) <= 0;
            if (within && value.stripTrailingZeros().scale() <= 0) {
                return value.intValue();
            }
        }
        throw new UnfitException(Bundle.ChartReading_missing(name));
    }

    /** Ends the reading with what is wrong. */
    private static final class UnfitException extends Exception {
        private static final long serialVersionUID = 1L;

        UnfitException(String what) {
            super(what);
        }
    }
}
