package org.glintery.charts;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.glintery.api.Result;
import org.glintery.api.charts.ChartRequest;
import org.glintery.api.charts.MadeChart;
import org.glintery.api.charts.Shading;
import org.glintery.api.charts.StockedChart;
import org.glintery.api.charts.Watch;
import org.glintery.charts.measure.ChartMeasures;
import org.glintery.charts.picture.LightGrid;
import org.glintery.charts.progress.PartOfWatch;
import org.glintery.charts.shading.DrillColours;
import org.glintery.charts.shading.Shaders;
import org.glintery.charts.stock.FewestToBuy;
import org.glintery.charts.stock.StockedCells;

/** Makes a chart of the drills that are there, once the picture is read and averaged. */
final class MakingFromStock {

    private static final double SHADED = 0.6;

    private final ChartRequest request;
    private final List<CardColour> card;
    private final Map<String, Long> inTheHouse;
    private final Watch watch;

    /** @param card the usable colours */
    MakingFromStock(ChartRequest request, List<CardColour> card, Map<String, Long> inTheHouse, Watch watch) {
        this.request = request;
        this.card = card;
        this.inTheHouse = inTheHouse;
        this.watch = watch;
    }

    Result<StockedChart> made(LightGrid wanted) {
        int cells = (int) IntStream.range(0, wanted.cells())
                .filter(cell -> !wanted.isBlank(cell))
                .count();
        return StockedColours.of(request, card, inTheHouse)
                .then(there -> StockedColours.chosen(MakingCharts.chosen(request, there, wanted), inTheHouse, cells))
                .then(stocked -> Result.ok(made(wanted, stocked)));
    }

    private StockedChart made(LightGrid wanted, StockedColours stocked) {
        DrillColours colours = MakingCharts.drills(stocked.colours());
        StockedCells plain = new StockedCells(stocked.counts());
        int[] drills = Shaders.withinCounts(request.shading(), request.strays(), plain, stocked.counts())
                .shaded(wanted, colours, new PartOfWatch(watch, 0, SHADED));
        MadeChart made = new MadeChart(
                ChartLines.counted(request.grid(), stocked.colours(), drills),
                ChartMeasures.of(wanted, colours, drills));
        boolean proven = request.shading() == Shading.NONE && request.strays() == 0;
        int[] bought = FewestToBuy.of(wanted, MakingCharts.drills(card), colours, stocked.counts(), watch);
        return new StockedChart(made, proven ? Optional.of(plain.gap()) : Optional.empty(), byCode(bought));
    }

    private Map<String, Long> byCode(int[] bought) {
        Map<String, Long> byCode = new LinkedHashMap<>();
        IntStream.range(0, bought.length)
                .filter(place -> bought[place] > 0)
                .boxed()
                .sorted(Comparator.comparingInt(place -> -bought[place]))
                .forEach(place -> byCode.put(card.get(place).code(), (long) bought[place]));
        return byCode;
    }
}
