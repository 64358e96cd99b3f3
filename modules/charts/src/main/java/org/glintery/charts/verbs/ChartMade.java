package org.glintery.charts.verbs;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.glintery.api.charts.ChartFigures;
import org.glintery.api.charts.ChartLine;
import org.glintery.api.charts.Grid;
import org.glintery.api.charts.MadeChart;
import org.glintery.api.ledger.Balance;
import org.glintery.charts.ChartSupply;
import org.openide.util.NbBundle.Messages;

/**
 * A chart that was made.
 *
 * @param supply what it takes to lay
 * @param figures how near it comes to its picture
 * @param stock when it was made from what is in the house
 * @param out the chart as JSON
 * @param png the chart as a picture, one pixel a cell
 */
@Messages({
    "# {0} - columns",
    "# {1} - rows",
    "# {2} - width in cm",
    "# {3} - height in cm",
    "# {4} - how many colours",
    "# {5} - the same in figures",
    "ChartMade.size={0} x {1} cells, {2} x {3} cm, {4,choice,0#no colour|1#one colour|1<{5} colours}.",
    "# {0} - how many drills",
    "# {1} - drills in figures",
    "# {2} - how many bags",
    "# {3} - bags in figures",
    "# {4} - grams",
    "ChartMade.supply={0,choice,0#No drill|1#One drill|1<{1} drills}, {2,choice,0#no bag|1#one bag|1<{3} bags}, about {4} g.",
    "# {0} - hours",
    "ChartMade.hours=About {0} hours at your pace.",
    "# {0} - mean",
    "# {1} - of 95 in 100",
    "# {2} - seen mean",
    "# {3} - seen of 95 in 100",
    "# {4} - percent",
    "ChartMade.figures=How near: a cell is {0} off (95 of 100 within {1}), from a distance {2} ({3}), in CIEDE2000; {4} % of the "
            + "drills are strays."
})
record ChartMade(
        int columns,
        int rows,
        double pitchMm,
        double widthMm,
        double heightMm,
        ChartSupply supply,
        ChartFigures figures,
        List<ChartLine> lines,
        Optional<FromStock> stock,
        Optional<Path> out,
        Optional<Path> png,
        List<String> warnings) {

    static ChartMade of(
            MadeChart made,
            ChartSupply supply,
            Optional<FromStock> stock,
            Optional<Path> out,
            Optional<Path> png,
            List<String> warnings) {
        Grid grid = made.chart().grid();
        return new ChartMade(
                grid.columns(),
                grid.rows(),
                grid.pitchMm(),
                grid.widthMm(),
                grid.heightMm(),
                supply,
                made.figures(),
                made.chart().lines(),
                stock,
                out,
                png,
                warnings);
    }

    /** For people. */
    String text() {
        String size = Bundle.ChartMade_size(
                Balance.grouped(columns),
                Balance.grouped(rows),
                one(widthMm / 10),
                one(heightMm / 10),
                lines.size(),
                Balance.grouped(lines.size()));
        String needs = Bundle.ChartMade_supply(
                supply.drills(),
                Balance.grouped(supply.drills()),
                supply.bags(),
                Balance.grouped(supply.bags()),
                Balance.grouped(Math.round(supply.grams())));
        String hours =
                supply.hours().map(h -> "\n" + Bundle.ChartMade_hours(one(h))).orElse("");
        return size + "\n" + needs + hours + "\n"
                + Bundle.ChartMade_figures(
                        one(figures.cellMean()),
                        one(figures.cell95()),
                        one(figures.seenMean()),
                        one(figures.seen95()),
                        one(100 * figures.strays()))
                + stock.map(from -> "\n" + from.text()).orElse("");
    }

    static String one(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
