package org.glintery.charts.verbs;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
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
    "ChartOptions.picture=the picture: PNG, JPEG, WebP, TIFF, BMP or GIF",
    "ChartOptions.card=the colour card: CSV with code, name, hex; JSON; or a GIMP palette",
    "ChartOptions.columns=cells across",
    "ChartOptions.rows=cells down",
    "ChartOptions.width=drilled width, instead of columns and rows",
    "ChartOptions.height=drilled height",
    "ChartOptions.pitch=from cell to cell; 2.5 when not said",
    "ChartOptions.colours=how many colours of the card at most; all when not said",
    "ChartOptions.shading=none, diffused, scattered or searched; searched when not said",
    "ChartOptions.strays=0, single drills are no matter, to 1, as few as may be",
    "ChartOptions.pin=a code to use in any case; may be said several times",
    "ChartOptions.ban=a code not to use; may be said several times",
    "ChartOptions.turn=90, 180 or 270 degrees to the right",
    "ChartOptions.crop=left, top, width and height of the part to take, in percent of the turned picture",
    "ChartOptions.outline=circle or oval",
    "ChartOptions.bag=drills in a bag; 200 when not said",
    "ChartOptions.pace=drills you lay in an hour",
    "ChartOptions.fromStock=only with drills that are there: a table with code and count, or house for what lies free in the "
            + "workshop, of the card named as the card's file is",
    "ChartOptions.out=where the chart goes, as JSON; takes the place of a file that is there",
    "ChartOptions.png=where its picture goes, one pixel a cell; takes the place of a file that is there",
    "# {0} - option",
    "# {1} - what was written",
    "ChartOptions.wrong=--{0} can''t be ''{1}''.",
    "ChartOptions.noGrid=Give the grid: --columns and --rows, or --width and --height in millimetres.",
    "ChartOptions.gridTooLarge=A chart has at least one cell and at most four million."
})
final class ChartOptions {

    static final List<Param> PARAMS = Stream.of(
                    List.of(
                            Param.positional("picture", "PICTURE", Bundle.ChartOptions_picture()),
                            Param.required("card", "FILE", Bundle.ChartOptions_card()),
                            Param.option("columns", "N", Bundle.ChartOptions_columns()),
                            Param.option("rows", "N", Bundle.ChartOptions_rows()),
                            Param.option("width", "MM", Bundle.ChartOptions_width()),
                            Param.option("height", "MM", Bundle.ChartOptions_height()),
                            Param.option("pitch", "MM", Bundle.ChartOptions_pitch()),
                            Param.option("colours", "K", Bundle.ChartOptions_colours()),
                            Param.option("shading", "WORD", Bundle.ChartOptions_shading()),
                            Param.option("strays", "0..1", Bundle.ChartOptions_strays()),
                            Param.option("pin", "CODE", Bundle.ChartOptions_pin()),
                            Param.option("ban", "CODE", Bundle.ChartOptions_ban()),
                            Param.option("turn", "DEGREES", Bundle.ChartOptions_turn()),
                            Param.option("crop", "L,T,W,H", Bundle.ChartOptions_crop()),
                            Param.option("outline", "WORD", Bundle.ChartOptions_outline()),
                            Param.option("bag", "N", Bundle.ChartOptions_bag()),
                            Param.option("pace", "N", Bundle.ChartOptions_pace()),
                            Param.option("from-stock", "FILE.csv|house", Bundle.ChartOptions_fromStock()),
                            Param.option("out", "CHART.json", Bundle.ChartOptions_out()),
                            Param.option("png", "OUT.png", Bundle.ChartOptions_png())),
                    InTheHouse.PARAMS)
            .flatMap(List::stream)
            .toList();

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
    private final InTheHouse inTheHouse;
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
        inTheHouse = new InTheHouse(numbers);
        drillsPerBag = numbers.whole("bag", 1, 1_000_000).orElse(Source.USUAL_DRILLS_PER_BAG);
        drillsAnHour = numbers.number("pace", 1, A_LIFETIME);
    }

    /** What is wrong with them, in words; empty when nothing is. */
    Optional<String> wrong() {
        return numbers.wrong();
    }

    InTheHouse inTheHouse() {
        return inTheHouse;
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
            numbers.say(Bundle.ChartOptions_noGrid());
            return Optional.empty();
        }
        if (across.get() * down.get() > Grid.MOST_CELLS) {
            numbers.say(Bundle.ChartOptions_gridTooLarge());
            return Optional.empty();
        }
        return Optional.of(new Grid(across.get().intValue(), down.get().intValue(), pitch));
    }

    private int quarters(int degrees) {
        if (degrees % 90 != 0) {
            numbers.say(Bundle.ChartOptions_wrong("turn", String.valueOf(degrees)));
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
            numbers.say(Bundle.ChartOptions_wrong("crop", call.need("crop")));
            return Crop.WHOLE;
        }
    }
}
