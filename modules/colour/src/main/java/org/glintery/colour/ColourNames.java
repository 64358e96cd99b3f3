package org.glintery.colour;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.glintery.api.Stable;

/**
 * Published names of colours. A colour's name is that of the nearest named colour under CIEDE2000; among equally near
 * ones that of the first.
 */
@Stable
public final class ColourNames {

    private record Placed(NamedColour named, Lab lab) {}

    private final List<Placed> names;

    private ColourNames(List<NamedColour> names) {
        this.names = names.stream()
                .map(named -> new Placed(named, named.colour().lab()))
                .toList();
    }

    /**
     * The 267 names of ISCC-NBS with their centroids: Kelly and Judd, "Color: Universal Language and Dictionary of Names",
     * NBS Special Publication 440, 1976. They say what a colour looks like.
     */
    public static ColourNames isccNbs() {
        return IsccNbs.NAMES;
    }

    /** The names of CSS Color Module Level 4; where two mean one colour, both are there. */
    public static ColourNames css() {
        return Css.NAMES;
    }

    /** In the published order. */
    public List<NamedColour> all() {
        return names.stream().map(Placed::named).toList();
    }

    /** By its name, in any case. */
    public Optional<Srgb> named(String name) {
        String wanted = name.strip().toLowerCase(Locale.ROOT);
        return names.stream()
                .map(Placed::named)
                .filter(named -> named.name().toLowerCase(Locale.ROOT).equals(wanted))
                .map(NamedColour::colour)
                .findFirst();
    }

    public NearestName nearest(Srgb colour) {
        return nearest(colour.lab());
    }

    /** The nearest by looking at every name. */
    public NearestName nearest(Lab colour) {
        NearestName best = null;
        for (Placed placed : names) {
            double difference = Ciede2000.difference(colour, placed.lab());
            if (best == null || difference < best.difference()) {
                best = new NearestName(placed.named(), difference);
            }
        }
        return best;
    }

    /** Read when first asked for. One published name carries a reference to another entry, which is no part of it. */
    private static final class IsccNbs {
        private static final ColourNames NAMES = new ColourNames(Table.rows("colours_nbs-iscc.csv").stream()
                .map(row -> new NamedColour(
                        row[0].replaceFirst(" see #\\d+$", ""),
                        Srgb.parse(row[1]).orElseThrow()))
                .toList());
    }

    /** Read when first asked for. */
    private static final class Css {
        private static final ColourNames NAMES = new ColourNames(Table.rows("colours_css4_named.csv").stream()
                .map(row -> new NamedColour(
                        row[0], new Srgb(Integer.parseInt(row[1]), Integer.parseInt(row[2]), Integer.parseInt(row[3]))))
                .toList());
    }
}
