package org.glintery.charts;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.glintery.charts.picture.LightGrid;
import org.glintery.charts.picture.PictureCut;
import org.glintery.charts.picture.SourcePicture;
import org.glintery.colour.ColourNames;
import org.glintery.colour.NamedColour;
import org.glintery.colour.Srgb;

/** What charts are compared with; the files are described in README.md beside them. */
public final class References {

    public static final int COLUMNS = 100;
    public static final int ROWS = 100;

    private References() {}

    /** ISCC-NBS centroids, farthest from each other first. @param colours 24 or 48 */
    public static List<Srgb> palette(int colours) {
        return rows("palette" + colours + ".csv").stream()
                .map(row -> Srgb.parse(row[2]).orElseThrow())
                .toList();
    }

    /** All 267 of them. */
    public static List<Srgb> isccNbs() {
        return ColourNames.isccNbs().all().stream().map(NamedColour::colour).toList();
    }

    /** The rows of baseline.csv for a palette: method, mean CIEDE2000 a cell, and after the blur. */
    public static List<String[]> baseline(int colours) {
        return rows("baseline.csv").stream()
                .filter(row -> row[3].equals("palette" + colours + ".csv"))
                .map(row -> new String[] {row[4], row[5], row[6]})
                .toList();
    }

    private static List<String[]> rows(String file) {
        return new String(TestPictures.resource(file), StandardCharsets.UTF_8)
                .lines()
                .skip(1)
                .map(line -> line.split(","))
                .toList();
    }

    /** The whole of a picture averaged to 100 x 100, as baseline.csv has it. */
    public static LightGrid target(byte[] file) {
        SourcePicture picture = TestPictures.read(file);
        return picture.averaged(new PictureCut(0, 0, picture.width(), picture.height()), COLUMNS, ROWS);
    }
}
