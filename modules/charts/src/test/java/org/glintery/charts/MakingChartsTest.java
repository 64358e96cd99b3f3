package org.glintery.charts;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.glintery.api.Result;
import org.glintery.api.charts.Chart;
import org.glintery.api.charts.ChartLine;
import org.glintery.api.charts.ChartRequest;
import org.glintery.api.charts.Crop;
import org.glintery.api.charts.Grid;
import org.glintery.api.charts.MadeChart;
import org.glintery.api.charts.Outline;
import org.glintery.api.charts.Shading;
import org.glintery.api.charts.Watch;
import org.glintery.api.stash.CardEntry;
import org.glintery.api.stash.ColourCard;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class MakingChartsTest {

    private static final Grid GRID = new Grid(8, 4, 2.5);

    /** Left half rust, right half sea. */
    private static final byte[] PICTURE = TestPictures.file(
            TestPictures.painted(80, 40, BufferedImage.TYPE_INT_RGB, (x, y) -> x < 40 ? 0xFFA0522D : 0xFF2E8B8B),
            "png");

    private static final ColourCard CARD = card(Map.of());

    private static ColourCard card(Map<String, Optional<String>> more) {
        Map<String, CardEntry> entries = new LinkedHashMap<>();
        entries.put("rust", entry(Optional.of("#a0522d")));
        entries.put("sea", entry(Optional.of("#2e8b8b")));
        entries.put("sand", entry(Optional.of("#d2b48c")));
        entries.put("night", entry(Optional.of("#191970")));
        more.forEach((code, hex) -> entries.put(code, entry(hex)));
        return new ColourCard("harbour", "Harbour", entries, List.of());
    }

    private static CardEntry entry(Optional<String> hex) {
        return new CardEntry(Optional.empty(), hex, false);
    }

    private static ChartRequest request(Shading shading) {
        return new ChartRequest(PICTURE, 0, Crop.WHOLE, GRID, Outline.WHOLE, CARD, 4, Set.of(), Set.of(), shading, 0);
    }

    private static ChartRequest with(ChartRequest r, int turns, Crop crop, Outline outline) {
        return new ChartRequest(
                r.picture(),
                turns,
                crop,
                r.grid(),
                outline,
                r.card(),
                r.colours(),
                r.pinned(),
                r.banned(),
                r.shading(),
                r.strays());
    }

    private static ChartRequest with(
            ChartRequest r, ColourCard card, int colours, Set<String> pinned, Set<String> banned) {
        return new ChartRequest(
                r.picture(),
                r.quarterTurns(),
                r.crop(),
                r.grid(),
                r.outline(),
                card,
                colours,
                pinned,
                banned,
                r.shading(),
                r.strays());
    }

    private static Result<MadeChart> make(ChartRequest request) {
        return new MakingCharts().make(request, Watch.NONE);
    }

    private static String code(Chart chart, int column, int row) {
        int line = chart.line(column, row);
        return line == Chart.NO_DRILL ? "" : chart.lines().get(line).code();
    }

    @ParameterizedTest
    @EnumSource
    void laysWhatTheCardHasExactly_withAnyShading(Shading shading) {
        MadeChart made = make(request(shading)).orThrow();

        assertThat(made.chart().lines()).extracting(ChartLine::code).containsExactly("rust", "sea");
        assertThat(made.chart().lines()).extracting(ChartLine::drills).containsExactly(16L, 16L);
        assertThat(made.chart().lines()).extracting(ChartLine::symbol).doesNotHaveDuplicates();
        assertThat(code(made.chart(), 3, 2)).isEqualTo("rust");
        assertThat(code(made.chart(), 4, 2)).isEqualTo("sea");
        assertThat(made.figures().cellMean()).isLessThan(1e-9);
        assertThat(made.figures().strays()).isZero();
    }

    @Test
    void turnsThenCrops() {
        Chart turned = make(with(request(Shading.NONE), 1, Crop.WHOLE, Outline.WHOLE))
                .orThrow()
                .chart();
        assertThat(code(turned, 0, 0)).isEqualTo("rust");
        assertThat(code(turned, 7, 0)).isEqualTo("rust");
        assertThat(code(turned, 0, 3)).isEqualTo("sea");

        Chart cropped = make(with(request(Shading.NONE), 1, new Crop(0, 0.5, 1, 0.5), Outline.WHOLE))
                .orThrow()
                .chart();
        assertThat(cropped.lines()).extracting(ChartLine::code).containsExactly("sea");
    }

    @Test
    void leavesTheCornersOfCircleAndOvalBlank() {
        Chart circle = make(with(request(Shading.SEARCHED), 0, Crop.WHOLE, Outline.CIRCLE))
                .orThrow()
                .chart();
        // a circle of diameter 4 on 4 x 4 cells holds all but the corners
        assertThat(circle.drills()).isEqualTo(12);
        assertThat(code(circle, 1, 1)).isEmpty();
        assertThat(code(circle, 3, 0)).isEqualTo("rust");
        Chart oval = make(with(request(Shading.DIFFUSED), 0, Crop.WHOLE, Outline.OVAL))
                .orThrow()
                .chart();
        assertThat(code(oval, 0, 0)).isEmpty();
        assertThat(code(oval, 0, 1)).isEqualTo("rust");
        assertThat(oval.drills())
                .isEqualTo(oval.lines().stream().mapToLong(ChartLine::drills).sum());
    }

    @Test
    void keepsToPinsBansAndHowManyColours() {
        ChartRequest plain = request(Shading.NONE);
        assertThat(make(with(plain, CARD, 4, Set.of(), Set.of("sea")))
                        .orThrow()
                        .chart()
                        .lines())
                .extracting(ChartLine::code)
                .doesNotContain("sea");
        Chart pinned =
                make(with(plain, CARD, 1, Set.of("sand"), Set.of())).orThrow().chart();
        assertThat(pinned.lines()).extracting(ChartLine::code).containsExactly("sand");
        Chart two = make(with(plain, CARD, 2, Set.of(), Set.of())).orThrow().chart();
        assertThat(two.lines()).extracting(ChartLine::code).containsExactly("rust", "sea");
    }

    @Test
    void refusesWhatCanNotBe_andSaysWhy() {
        ChartRequest plain = request(Shading.NONE);
        refused(with(plain, CARD, 4, Set.of("sea"), Set.of("sea")), "pinned-and-banned");
        refused(with(plain, CARD, 4, Set.of("moss"), Set.of()), "pinned-unknown");
        refused(with(plain, CARD, 1, Set.of("sea", "sand"), Set.of()), "too-many-pinned");
        refused(with(plain, CARD, 4, Set.of(), Set.of("rust", "sea", "sand", "night")), "no-colours");
        refused(
                new ChartRequest(
                        new byte[] {1, 2, 3},
                        0,
                        Crop.WHOLE,
                        GRID,
                        Outline.WHOLE,
                        CARD,
                        4,
                        Set.of(),
                        Set.of(),
                        Shading.NONE,
                        0),
                "picture-of-no-kind");
    }

    private static void refused(ChartRequest request, String code) {
        assertThat(make(request)).isInstanceOfSatisfying(Result.Refused.class, no -> {
            assertThat(no.refusal().code()).isEqualTo(code);
            assertThat(no.refusal().text()).isNotBlank();
        });
    }

    @Test
    void tellsOfCodesWithoutAColour() {
        var made = (Result.Ok<MadeChart>)
                make(with(request(Shading.NONE), card(Map.of("moss", Optional.empty())), 9, Set.of(), Set.of()));
        assertThat(made.warnings()).containsExactly("One code of the card has no known colour and was left out.");
    }

    @Test
    void endsWithoutAnOutcome_whenCancelled() {
        Watch cancelling = new Watch() {
            private double reached;

            @Override
            public void reached(double share) {
                reached = share;
            }

            @Override
            public boolean isCancelled() {
                return reached > 0;
            }
        };
        assertThat(new MakingCharts().make(request(Shading.SEARCHED), cancelling))
                .isInstanceOfSatisfying(
                        Result.Refused.class,
                        no -> assertThat(no.refusal().code()).isEqualTo("cancelled"));
    }
}
