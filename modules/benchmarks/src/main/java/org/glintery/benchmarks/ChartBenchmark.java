package org.glintery.benchmarks;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.WritableRaster;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.glintery.api.charts.ChartRequest;
import org.glintery.api.charts.Charts;
import org.glintery.api.charts.Crop;
import org.glintery.api.charts.Grid;
import org.glintery.api.charts.Outline;
import org.glintery.api.charts.Shading;
import org.glintery.api.charts.StockedChart;
import org.glintery.api.charts.Watch;
import org.glintery.api.stash.CardEntry;
import org.glintery.api.stash.ColourCard;
import org.glintery.api.workshop.Workshop;

/**
 * A chart of 500 x 700 in the 267 ISCC-NBS colours from a JPEG of 12 megapixels, with decoding, by turns with a general-purpose image
 * program (Debian's imagemagick) that resizes and remaps the same file.
 */
final class ChartBenchmark implements Benchmark {

    private static final int TURNS = 5;
    private static final int WIDTH = 3_000;
    private static final int HEIGHT = 4_000;
    private static final int COLUMNS = 500;
    private static final int ROWS = 700;
    private static final double GRAIN = 4;
    private static final Path PHOTOGRAPH = Path.of("modules/charts/src/test/resources/org/glintery/charts/coffee.png");
    private static final Path ISCC_NBS =
            Path.of("modules/colour/src/main/resources/org/glintery/colour/colours_nbs-iscc.csv");
    private static final double MOST_NEAREST = 0.7;
    private static final double MOST_DIFFUSED = 0.8;
    private static final double MOST_SEARCHED_S = 8;
    private static final double MOST_STOCKED_S = 15;
    private static final int STOCKED = 300;
    private static final double MOST_GAP = 0.01;
    private static final List<String> PROGRAMS = List.of("convert-im6.q16", "convert");

    @Override
    public String name() {
        return "chart";
    }

    @Override
    public List<Figure> run(Bench bench) throws IOException, InterruptedException {
        Path folder = bench.fresh("chart");
        Random random = new Random(bench.seed());
        Path picture = folder.resolve("picture.jpg");
        ImageIO.write(enlarged(random), "jpg", picture.toFile());
        int[] colours = colours();
        Path palette = folder.resolve("palette.png");
        ImageIO.write(row(colours), "png", palette.toFile());
        try (Workshop workshop =
                bench.workshops().create(folder.resolve("workshop")).orThrow()) {
            Charts charts = workshop.find(Charts.class).orElseThrow();
            return measured(charts, new Remap(program(), picture, palette, folder), card(colours));
        }
    }

    private List<Figure> measured(Charts charts, Remap remap, ColourCard card)
            throws IOException, InterruptedException {
        List<Double> nearest = new ArrayList<>();
        List<Double> remapped = new ArrayList<>();
        List<Double> diffused = new ArrayList<>();
        List<Double> remapDiffused = new ArrayList<>();
        List<Double> searched = new ArrayList<>();
        List<Double> stocked = new ArrayList<>();
        List<Double> gaps = new ArrayList<>();
        fromStock(charts, remap.picture(), gaps);
        for (Shading shading : Shading.values()) {
            made(charts, remap.picture(), card, shading);
        }
        for (int turn = 0; turn < TURNS; turn++) {
            nearest.add(made(charts, remap.picture(), card, Shading.NONE));
            remapped.add(remap.seconds("None"));
            diffused.add(made(charts, remap.picture(), card, Shading.DIFFUSED));
            remapDiffused.add(remap.seconds("FloydSteinberg"));
            searched.add(made(charts, remap.picture(), card, Shading.SEARCHED));
            stocked.add(fromStock(charts, remap.picture(), gaps));
        }
        return List.of(
                against("a chart without shading", nearest, "resize and remap", remapped, MOST_NEAREST),
                against("a diffused chart", diffused, "resize and diffused remap", remapDiffused, MOST_DIFFUSED),
                Figure.alone(
                        name(), "a searched chart", Median.of(searched), Unit.SECONDS, Limit.atMost(MOST_SEARCHED_S)),
                Figure.alone(
                        name(),
                        "a chart from stock, proven within %.2f %%".formatted(100 * Median.of(gaps)),
                        Median.of(stocked),
                        Unit.SECONDS,
                        Limit.atMost(MOST_STOCKED_S)));
    }

    private Figure against(String what, List<Double> ours, String other, List<Double> theirs, double most) {
        return Figure.ratio(
                name(),
                what,
                Median.of(ours),
                Unit.SECONDS,
                new Figure.Against(other, Median.of(theirs)),
                Limit.atMost(most));
    }

    /** Seconds for a chart without shading from drills of so many random colours, half as many again as there are cells. */
    private static double fromStock(Charts charts, Path picture, List<Double> gaps) throws IOException {
        Random random = new Random(STOCKED);
        int[] colours = random.ints(STOCKED, 0, 1 << 24).toArray();
        ColourCard card = card(colours);
        Map<String, Long> counts = new LinkedHashMap<>();
        card.entries()
                .keySet()
                .forEach(code -> counts.put(code, (long) (3.0 * COLUMNS * ROWS / STOCKED * random.nextDouble())));
        long start = System.nanoTime();
        StockedChart chart = charts.makeFromStock(request(picture, card, Shading.NONE), counts, Watch.NONE)
                .orThrow();
        double seconds = (System.nanoTime() - start) / 1e9;
        double gap = chart.gap().orElseThrow();
        if (gap > MOST_GAP) {
            throw new BenchmarkFailed("a chart from stock was proven within " + gap + " only");
        }
        gaps.add(gap);
        return seconds;
    }

    /** Seconds that it took. */
    private static double made(Charts charts, Path picture, ColourCard card, Shading shading) throws IOException {
        long start = System.nanoTime();
        charts.make(request(picture, card, shading), Watch.NONE).orThrow();
        return (System.nanoTime() - start) / 1e9;
    }

    private static ChartRequest request(Path picture, ColourCard card, Shading shading) throws IOException {
        return new ChartRequest(
                Files.readAllBytes(picture),
                0,
                Crop.WHOLE,
                new Grid(COLUMNS, ROWS, Grid.USUAL_PITCH_MM),
                Outline.WHOLE,
                card,
                Integer.MAX_VALUE,
                Set.of(),
                Set.of(),
                shading,
                0);
    }

    /** The other program on the same file. */
    private record Remap(Path program, Path picture, Path palette, Path folder) {

        double seconds(String dither) throws IOException, InterruptedException {
            List<String> command = List.of(
                    program.toString(),
                    picture.toString(),
                    "-filter",
                    "box",
                    "-resize",
                    COLUMNS + "x" + ROWS + "!",
                    "-dither",
                    dither,
                    "-remap",
                    palette.toString(),
                    folder.resolve("remapped.png").toString());
            long start = System.nanoTime();
            Process process = new ProcessBuilder(command).inheritIO().start();
            if (process.waitFor() != 0) {
                throw new BenchmarkFailed(String.join(" ", command) + " failed");
            }
            return (System.nanoTime() - start) / 1e9;
        }
    }

    private static Path program() {
        return PROGRAMS.stream()
                .flatMap(name -> Stream.of(System.getenv("PATH").split(":")).map(folder -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow(() -> new BenchmarkFailed("imagemagick is not on the path"));
    }

    private static int[] colours() throws IOException {
        try (Stream<String> lines = Files.lines(ISCC_NBS)) {
            return lines.skip(1)
                    .mapToInt(line -> Integer.parseInt(line.substring(line.lastIndexOf('#') + 1), 16))
                    .toArray();
        }
    }

    private static ColourCard card(int[] colours) {
        Map<String, CardEntry> entries = new LinkedHashMap<>();
        for (int i = 0; i < colours.length; i++) {
            String hex = String.format("#%06x", colours[i]);
            entries.put("c" + i, new CardEntry(Optional.empty(), Optional.of(hex), false));
        }
        return new ColourCard("iscc-nbs", "ISCC-NBS", entries, List.of());
    }

    private static BufferedImage row(int[] colours) {
        BufferedImage row = new BufferedImage(colours.length, 1, BufferedImage.TYPE_INT_RGB);
        row.setRGB(0, 0, colours.length, 1, colours, 0, colours.length);
        return row;
    }

    /** A photograph, enlarged, with grain. */
    private static BufferedImage enlarged(Random random) throws IOException {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_3BYTE_BGR);
        Graphics2D graphics = image.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        graphics.drawImage(ImageIO.read(PHOTOGRAPH.toFile()), 0, 0, WIDTH, HEIGHT, null);
        graphics.dispose();
        WritableRaster pixels = image.getRaster();
        int[] row = new int[3 * WIDTH];
        for (int y = 0; y < HEIGHT; y++) {
            pixels.getPixels(0, y, WIDTH, 1, row);
            for (int i = 0; i < row.length; i++) {
                row[i] = Math.max(0, Math.min(255, row[i] + (int) (GRAIN * random.nextGaussian())));
            }
            pixels.setPixels(0, y, WIDTH, 1, row);
        }
        return image;
    }
}
