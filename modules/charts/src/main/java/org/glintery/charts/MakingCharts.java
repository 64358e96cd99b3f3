package org.glintery.charts;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.function.BiFunction;
import org.glintery.api.OffTheEventThread;
import org.glintery.api.Result;
import org.glintery.api.charts.Chart;
import org.glintery.api.charts.ChartRequest;
import org.glintery.api.charts.Charts;
import org.glintery.api.charts.Crop;
import org.glintery.api.charts.Grid;
import org.glintery.api.charts.MadeChart;
import org.glintery.api.charts.StockedChart;
import org.glintery.api.charts.Watch;
import org.glintery.charts.measure.ChartMeasures;
import org.glintery.charts.palette.PaletteChoice;
import org.glintery.charts.picture.LightGrid;
import org.glintery.charts.picture.PictureCut;
import org.glintery.charts.picture.PictureFile;
import org.glintery.charts.picture.SourcePicture;
import org.glintery.charts.progress.PartOfWatch;
import org.glintery.charts.shading.DrillColours;
import org.glintery.charts.shading.LabGrid;
import org.glintery.charts.shading.Shaders;
import org.glintery.colour.Lab;
import org.openide.util.NbBundle.Messages;

/** Makes charts from pictures: reads, averages over the grid, chooses colours, shades, counts, measures. No state. */
@Messages("MakingCharts.cancelled=Cancelled. Nothing was made.")
public final class MakingCharts implements Charts {

    private static final double READ = 0.1;
    private static final double CHOSEN = 0.2;
    private static final double SHADED = 0.9;

    @Override
    public Result<MadeChart> make(ChartRequest request, Watch watch) {
        OffTheEventThread.check();
        return averaged(request, watch, (card, wanted) -> made(request, card, wanted, watch));
    }

    @Override
    public Result<StockedChart> makeFromStock(ChartRequest request, Map<String, Long> inTheHouse, Watch watch) {
        OffTheEventThread.check();
        PartOfWatch making = new PartOfWatch(watch, READ, 1);
        return averaged(
                request,
                watch,
                (card, wanted) -> new MakingFromStock(request, card, inTheHouse, making)
                        .made(wanted)
                        .then(made -> step(watch, 1, made)));
    }

    private static <T> Result<T> averaged(
            ChartRequest request, Watch watch, BiFunction<List<CardColour>, LightGrid, Result<T>> made) {
        try {
            return UsableColours.of(request)
                    .then(card -> PictureFile.read(request.picture())
                            .then(picture -> step(watch, READ, wanted(request, picture)))
                            .then(wanted -> made.apply(card, wanted)));
        } catch (CancellationException e) {
            return Result.refused("cancelled", Bundle.MakingCharts_cancelled());
        }
    }

    private static LightGrid wanted(ChartRequest request, SourcePicture picture) {
        SourcePicture turned = picture.turned(request.quarterTurns());
        Crop crop = request.crop();
        PictureCut part = new PictureCut(
                crop.left() * turned.width(),
                crop.top() * turned.height(),
                crop.width() * turned.width(),
                crop.height() * turned.height());
        Grid grid = request.grid();
        return turned.averaged(part, grid.columns(), grid.rows())
                .without(cell -> !request.outline()
                        .holds(grid.columns(), grid.rows(), cell % grid.columns(), cell / grid.columns()));
    }

    private static Result<MadeChart> made(ChartRequest request, List<CardColour> card, LightGrid wanted, Watch watch) {
        List<CardColour> chosen = chosen(request, card, wanted);
        DrillColours colours = drills(chosen);
        return step(watch, CHOSEN, colours)
                .then(ready -> step(
                        watch,
                        SHADED,
                        Shaders.of(request.shading(), request.strays())
                                .shaded(wanted, colours, new PartOfWatch(watch, CHOSEN, SHADED))))
                .then(drills -> {
                    Chart chart = ChartLines.counted(request.grid(), chosen, drills);
                    MadeChart made = new MadeChart(chart, ChartMeasures.of(wanted, colours, drills));
                    return step(watch, 1, made);
                });
    }

    static DrillColours drills(List<CardColour> colours) {
        return new DrillColours(colours.stream().map(CardColour::colour).toList());
    }

    static List<CardColour> chosen(ChartRequest request, List<CardColour> card, LightGrid wanted) {
        if (request.colours() >= card.size()) {
            return card;
        }
        boolean[] pinned = new boolean[card.size()];
        for (int i = 0; i < pinned.length; i++) {
            pinned[i] = request.pinned().contains(card.get(i).code());
        }
        Lab[] colours = card.stream().map(one -> one.colour().lab()).toArray(Lab[]::new);
        return Arrays.stream(PaletteChoice.best(wanted, LabGrid.of(wanted), colours, pinned, request.colours()))
                .mapToObj(card::get)
                .toList();
    }

    /** Goes on unless the watch cancels. */
    private static <T> Result<T> step(Watch watch, double share, T value) {
        if (watch.isCancelled()) {
            return Result.refused("cancelled", Bundle.MakingCharts_cancelled());
        }
        watch.reached(share);
        return Result.ok(value);
    }
}
