package org.glintery.charts.verbs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.glintery.api.Json;
import org.glintery.api.JsonCodec;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.VerbResult;
import org.glintery.charts.TestPictures;
import org.glintery.testkit.FakeCall;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openide.util.Lookup;

class ChartMakeVerbTest {

    @TempDir
    Path folder;

    private Path picture;
    private Path card;

    @BeforeEach
    void files() throws IOException {
        picture = Files.write(folder.resolve("coffee.png"), TestPictures.resource("coffee.png"));
        card = Files.write(folder.resolve("palette.csv"), TestPictures.resource("palette24.csv"));
    }

    private FakeCall call() {
        return new FakeCall(folder).with("picture", picture.toString()).with("card", card.toString());
    }

    private FakeCall small() {
        return call().with("columns", "30").with("rows", "20").with("shading", "none");
    }

    private static VerbResult run(FakeCall call) {
        return new ChartMakeVerb().run(call);
    }

    @Test
    void writesTheChartAsJsonAndAsAPicture() throws IOException {
        Path out = folder.resolve("chart.json");
        Path png = folder.resolve("chart.png");
        VerbResult result = run(small().with("out", out.toString()).with("png", png.toString()));

        ChartMade made = (ChartMade) ((VerbResult.Said) result).answer();
        Json.Obj chart = (Json.Obj) Lookup.getDefault().lookup(JsonCodec.class).parse(Files.readString(out));
        assertThat(chart.fields().keySet()).containsExactly("columns", "rows", "lines", "cells");
        var rows = ((Json.Arr) chart.get("cells").orElseThrow()).items();
        var lines = ((Json.Arr) chart.get("lines").orElseThrow()).items();
        assertThat(rows).hasSize(20);
        assertThat(lines).hasSameSizeAs(made.lines());
        var image = ImageIO.read(png.toFile());
        assertThat(image.getWidth()).isEqualTo(30);
        long[] counted = new long[lines.size()];
        for (int row = 0; row < 20; row++) {
            var cells = ((Json.Arr) rows.get(row)).items();
            assertThat(cells).hasSize(30);
            for (int column = 0; column < 30; column++) {
                int line = ((Json.Num) cells.get(column)).value().intValueExact();
                counted[line]++;
                assertThat(String.format("#%06x", image.getRGB(column, row) & 0xFFFFFF))
                        .isEqualTo(((Json.Obj) lines.get(line)).text("hex").orElseThrow());
            }
        }
        for (int line = 0; line < counted.length; line++) {
            Json.Obj one = (Json.Obj) lines.get(line);
            assertThat(one.fields().keySet()).containsExactly("symbol", "code", "hex", "drills");
            assertThat(one.number("drills").orElseThrow().longValueExact()).isEqualTo(counted[line]);
        }
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).hasSize(4);
        }
    }

    @Test
    void tellsWhatItTakes() {
        VerbResult.Said said = (VerbResult.Said) run(small().with("bag", "100").with("pace", "300"));

        ChartMade made = (ChartMade) said.answer();
        assertThat(made.supply().drills()).isEqualTo(600);
        assertThat(made.supply().hours().orElseThrow()).isCloseTo(2, within(1e-9));
        assertThat(made.supply().bags())
                .isEqualTo(made.lines().stream()
                        .mapToLong(line -> (line.drills() + 99) / 100)
                        .sum());
        assertThat(said.text()).startsWith("30 x 20 cells, 7.5 x 5.0 cm, ").contains("About 2.0 hours at your pace.");
    }

    @Test
    void reachesTheFiguresOfTheRecordedBaseline_withoutShading() {
        ChartMade made = (ChartMade) ((VerbResult.Said) run(call().with("columns", "100")
                        .with("rows", "100")
                        .with("colours", "24")
                        .with("shading", "none")))
                .answer();
        // shading/baseline.csv, palette24, nearest by CIEDE2000
        assertThat(made.figures().cellMean()).isCloseTo(10.372, within(1e-3));
        assertThat(made.figures().seenMean()).isCloseTo(6.881, within(2e-3));
    }

    @Test
    void takesTheGridFromASize() {
        ChartMade made = (ChartMade) ((VerbResult.Said) run(call().with("width", "101")
                        .with("height", "56")
                        .with("pitch", "2,8")
                        .with("shading", "none")))
                .answer();
        assertThat(made.columns()).isEqualTo(36);
        assertThat(made.rows()).isEqualTo(20);
        assertThat(made.widthMm()).isCloseTo(100.8, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "columns, 0", "columns, many", "colours, 1.5", "shading, dithered", "strays, 2", "turn, 45",
        "crop, '10,10,20'", "crop, '60,0,50,100'", "outline, star", "bag, 0", "pace, 0", "pitch, -1"
    })
    void isWrongUsage_whenAnOptionCanNotBe(String option, String value) {
        FakeCall call = call().with(option, value).with("columns", "30").with("rows", "20");
        VerbResult.WrongUsage wrong = (VerbResult.WrongUsage) run(call);
        assertThat(wrong.text()).isEqualTo("--%s can't be '%s'.".formatted(option, value));
    }

    @Test
    void isWrongUsage_whenANumberCanBeReadInTwoWays() {
        FakeCall call = call().with("pace", "1,800").with("columns", "30").with("rows", "20");
        assertThat(run(call))
                .isEqualTo(
                        VerbResult.wrongUsage("--pace '1,800' can be read as 1.800 or as 1800. Write 1.8000 or 1800."));
    }

    @Test
    void isWrongUsage_withoutAGrid_orWithOneTooLarge() {
        assertThat(((VerbResult.WrongUsage) run(call().with("columns", "30"))).text())
                .contains("Give the grid");
        assertThat(((VerbResult.WrongUsage) run(call().with("columns", "3000").with("rows", "3000"))).text())
                .contains("four million");
    }

    @Test
    void replacesTheChartThatIsThere_andSaysSo_butTouchesNoOtherFile() throws IOException {
        Path out = Files.writeString(folder.resolve("chart.json"), "made before");
        Path others = Files.writeString(folder.resolve("chart.json.new"), "somebody's own");
        assertThat(run(small().with("out", out.toString()))).isInstanceOf(VerbResult.Said.class);
        assertThat(Files.readString(out)).startsWith("{");
        assertThat(others).hasContent("somebody's own");
        assertThat(new ChartMakeVerb()
                        .params().stream()
                                .filter(param -> param.name().equals("out")
                                        || param.name().equals("png"))
                                .map(Param::help))
                .hasSize(2)
                .allMatch(help -> help.contains("takes the place of a file that is there"));
    }

    @Test
    void refuses_whenAFileIsNotThere_orCanNotBeWritten() throws IOException {
        refused(
                new FakeCall(folder)
                        .with("picture", folder.resolve("none.png").toString())
                        .with("card", card.toString())
                        .with("columns", "3")
                        .with("rows", "2"),
                "no-file");
        refused(small().with("out", folder.resolve("none/chart.json").toString()), "no-folder");
        Path taken = Files.createDirectory(folder.resolve("taken"));
        Files.createFile(taken.resolve("inside"));
        refused(small().with("png", taken.toString()), "is-folder");
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrder("coffee.png", "palette.csv", "taken");
        }
    }

    @Test
    void writesBothFilesOrNone() throws IOException {
        Path out = Files.writeString(folder.resolve("chart.json"), "the chart from before");
        Path taken = Files.createDirectory(folder.resolve("taken"));
        refused(small().with("out", out.toString()).with("png", taken.toString()), "is-folder");
        assertThat(out).hasContent("the chart from before");

        Files.delete(out);
        refused(
                small().with("out", out.toString())
                        .with("png", folder.resolve("none/chart.png").toString()),
                "no-folder");
        refused(
                small().with("out", taken.toString())
                        .with("png", folder.resolve("chart.png").toString()),
                "is-folder");
        assertThat(run(small().with("out", out.toString()).with("png", out.toString())))
                .isEqualTo(VerbResult.wrongUsage("--out and --png are two files. Give them two names."));
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrder("coffee.png", "palette.csv", "taken");
        }
    }

    private static void refused(FakeCall call, String code) {
        VerbResult result = run(call);
        assertThat(result).isInstanceOf(VerbResult.Refused.class);
        assertThat(((VerbResult.Refused) result).refusal().code()).isEqualTo(code);
    }
}
