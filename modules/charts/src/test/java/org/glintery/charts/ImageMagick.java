package org.glintery.charts;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.glintery.charts.picture.LightGrid;
import org.glintery.colour.LinearRgb;
import org.glintery.colour.Srgb;

/** The general-purpose image program that charts are compared with, where it is on the path. */
final class ImageMagick {

    private static final Optional<Path> CONVERT = Stream.of(
                    System.getenv("PATH").split(":"))
            .map(folder -> Path.of(folder, "convert"))
            .filter(ImageMagick::isIt)
            .findFirst();

    private ImageMagick() {}

    static boolean isThere() {
        return CONVERT.isPresent();
    }

    private static boolean isIt(Path program) {
        if (!Files.isExecutable(program)) {
            return false;
        }
        try {
            Process process = new ProcessBuilder(program.toString(), "-version")
                    .redirectErrorStream(true)
                    .start();
            String said = new String(process.getInputStream().readAllBytes());
            return process.waitFor(30, TimeUnit.SECONDS) && said.contains("ImageMagick");
        } catch (IOException e) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /** A grid in the colours of a palette. @param dither FloydSteinberg or Riemersma */
    static int[] remapped(Path folder, LightGrid grid, List<Srgb> palette, String dither)
            throws IOException, InterruptedException {
        BufferedImage target = TestPictures.painted(
                grid.columns(),
                grid.rows(),
                BufferedImage.TYPE_INT_RGB,
                (x, y) -> light(grid, y * grid.columns() + x).srgb().rgb());
        BufferedImage colours = TestPictures.painted(
                palette.size(),
                1,
                BufferedImage.TYPE_INT_RGB,
                (x, y) -> palette.get(x).rgb());
        Path in = Files.write(folder.resolve("in.png"), TestPictures.file(target, "png"));
        Path map = Files.write(folder.resolve("map.png"), TestPictures.file(colours, "png"));
        Path out = folder.resolve("out.png");
        List<String> command = new ArrayList<>(List.of(CONVERT.orElseThrow().toString(), in.toString()));
        command.addAll(List.of("-dither", dither, "-remap", map.toString(), "PNG24:" + out));
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes());
        if (process.waitFor() != 0) {
            throw new IOException(said);
        }
        Map<Integer, Integer> places = new HashMap<>();
        for (int i = 0; i < palette.size(); i++) {
            places.putIfAbsent(palette.get(i).rgb(), i);
        }
        BufferedImage mapped = ImageIO.read(out.toFile());
        int[] drills = new int[grid.cells()];
        for (int cell = 0; cell < drills.length; cell++) {
            drills[cell] = places.get(mapped.getRGB(cell % grid.columns(), cell / grid.columns()) & 0xFFFFFF);
        }
        return drills;
    }

    private static LinearRgb light(LightGrid grid, int cell) {
        return new LinearRgb(grid.red(cell), grid.green(cell), grid.blue(cell));
    }
}
