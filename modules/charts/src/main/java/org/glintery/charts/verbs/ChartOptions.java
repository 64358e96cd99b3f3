package org.glintery.charts.verbs;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.glintery.api.charts.ChartRequest;
import org.glintery.api.charts.Crop;
import org.glintery.api.charts.Grid;
import org.glintery.api.charts.Outline;
import org.glintery.api.charts.Shading;
import org.glintery.api.stash.ColourCard;
import org.glintery.api.stash.Source;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.VerbCall;
import org.openide.util.NbBundle.Messages;

/** What a chart is to be, as options. Used once; not safe for several threads. */
@Messages({
    "chart-picture=the picture: PNG, JPEG, WebP, TIFF, BMP or GIF",
    "chart-card=the colour card: CSV with code, name, hex; JSON; or a GIMP palette",
    "chart-columns=cells across",
    "chart-rows=cells down",
    "chart-width=drilled width, instead of columns and rows",
    "chart-height=drilled height",
    "chart-pitch=from cell to cell; 2.5 when not said",
    "chart-colours=how many colours of the card at most; all when not said",
    "chart-shading=none, diffused, scattered or searched; searched when not said",
    "chart-strays=0, single drills are no matter, to 1, as few as may be",
    "chart-pin=a code to use in any case; may be said several times",
    "chart-ban=a code not to use; may be said several times",
    "chart-turn=90, 180 or 270 degrees to the right",
    "chart-crop=left, top, width and height of the part to take, in percent of the turned picture",
    "chart-outline=circle or oval",
    "chart-bag=drills in a bag; 200 when not said",
    "chart-pace=drills you lay in an hour",
    "chart-out=where the chart goes, as JSON",
    "chart-png=where its picture goes, one pixel a cell",
    "# {0} - option",
    "# {1} - what was written",
    "chart-wrong=--{0} can''t be ''{1}''. See glintery-do chart make --help.",
    "chart-no-grid=Give the grid: --columns and --rows, or --width and --height in millimetres.",
    "chart-grid-too-large=A chart has at least one cell and at most four million."
})
final class ChartOptions {

    static final List<Param> PARAMS = List.of(
            Param.positional("picture", "PICTURE", Bundle.chart_picture()),
            Param.required("card", "FILE", Bundle.chart_card()),
            Param.option("columns", "N", Bundle.chart_columns()),
            Param.option("rows", "N", Bundle.chart_rows()),
            Param.option("width", "MM", Bundle.chart_width()),
            Param.option("height", "MM", Bundle.chart_height()),
            Param.option("pitch", "MM", Bundle.chart_pitch()),
            Param.option("colours", "K", Bundle.chart_colours()),
            Param.option("shading", "WORD", Bundle.chart_shading()),
            Param.option("strays", "0..1", Bundle.chart_strays()),
            Param.option("pin", "CODE", Bundle.chart_pin()),
            Param.option("ban", "CODE", Bundle.chart_ban()),
            Param.option("turn", "DEGREES", Bundle.chart_turn()),
            Param.option("crop", "L,T,W,H", Bundle.chart_crop()),
            Param.option("outline", "WORD", Bundle.chart_outline()),
            Param.option("bag", "N", Bundle.chart_bag()),
            Param.option("pace", "N", Bundle.chart_pace()),
            Param.option("out", "CHART.json", Bundle.chart_out()),
            Param.option("png", "OUT.png", Bundle.chart_png()));

    private static final double A_LIFETIME = 1e9;

    private final VerbCall call;
    private final OptionNumbers numbers;
    private final Optional<Grid> grid;
    private final int colours;
    private final Shading shading;
    private final double strays;
    private final int turns;
    private final Crop crop;
    private final Outline outline;
    private final int drillsPerBag;
    private final Optional<Double> drillsAnHour;

    ChartOptions(VerbCall call) {
        this.call = call;
        numbers = new OptionNumbers(call);
        grid = grid();
        colours = numbers.whole("colours", 1, Integer.MAX_VALUE).orElse(Integer.MAX_VALUE);
        shading = numbers.word("shading", Shading.class).orElse(Shading.SEARCHED);
        strays = numbers.number("strays", 0, 1).orElse(0.0);
        turns = numbers.whole("turn", 0, 360).map(degrees -> quarters(degrees)).orElse(0);
        crop = crop();
        outline = numbers.word("outline", Outline.class).orElse(Outline.WHOLE);
        drillsPerBag = numbers.whole("bag", 1, 1_000_000).orElse(Source.USUAL_DRILLS_PER_BAG);
        drillsAnHour = numbers.number("pace", 1, A_LIFETIME);
    }

    /** What is wrong with them, in words; empty when nothing is. */
    Optional<String> wrong() {
        return numbers.wrong();
    }

    int drillsPerBag() {
        return drillsPerBag;
    }

    Optional<Double> drillsAnHour() {
        return drillsAnHour;
    }

    /** Only when nothing is wrong. */
    ChartRequest request(byte[] picture, ColourCard card) {
        return new ChartRequest(
                picture,
                turns,
                crop,
                grid.orElseThrow(),
                outline,
                card,
                colours,
                Set.copyOf(call.values("pin")),
                Set.copyOf(call.values("ban")),
                shading,
                strays);
    }

    private Optional<Grid> grid() {
        double pitch = numbers.number("pitch", 0.1, 100).orElse(Grid.USUAL_PITCH_MM);
        Optional<Double> columns = numbers.whole("columns", 1, Grid.MOST_CELLS).map(Integer::doubleValue);
        Optional<Double> rows = numbers.whole("rows", 1, Grid.MOST_CELLS).map(Integer::doubleValue);
        Optional<Double> width = numbers.number("width", 0.1, A_LIFETIME);
        Optional<Double> height = numbers.number("height", 0.1, A_LIFETIME);
        Optional<Double> across = columns.or(() -> width.map(mm -> Math.max(1, Math.rint(mm / pitch))));
        Optional<Double> down = rows.or(() -> height.map(mm -> Math.max(1, Math.rint(mm / pitch))));
        if (across.isEmpty() || down.isEmpty()) {
            numbers.say(Bundle.chart_no_grid());
            return Optional.empty();
        }
        if (across.get() * down.get() > Grid.MOST_CELLS) {
            numbers.say(Bundle.chart_grid_too_large());
            return Optional.empty();
        }
        return Optional.of(new Grid(across.get().intValue(), down.get().intValue(), pitch));
    }

    private int quarters(int degrees) {
        if (degrees % 90 != 0) {
            numbers.say(Bundle.chart_wrong("turn", String.valueOf(degrees)));
        }
        return degrees / 90;
    }

    private Crop crop() {
        List<Double> sides = numbers.list("crop", 4, 0, 100);
        if (sides.isEmpty()) {
            return Crop.WHOLE;
        }
        try {
            return new Crop(sides.get(0) / 100, sides.get(1) / 100, sides.get(2) / 100, sides.get(3) / 100);
        } catch (IllegalArgumentException e) {
            numbers.say(Bundle.chart_wrong("crop", call.need("crop")));
            return Crop.WHOLE;
        }
    }
}
