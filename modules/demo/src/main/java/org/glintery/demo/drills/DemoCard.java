package org.glintery.demo.drills;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.glintery.api.stash.CardEntry;
import org.glintery.api.stash.ColourCard;
import org.glintery.colour.Ciede2000;
import org.glintery.colour.ColourNames;
import org.glintery.colour.Lab;
import org.glintery.colour.LinearRgb;
import org.glintery.colour.Srgb;

/**
 * The invented card of the demo: 120 colours on a regular lattice of Lab, those inside sRGB that lie nearest to a warm grey.
 * Immutable.
 *
 * <p>A code such as {@code 4R2-K} says where on the lattice a colour is: its step of lightness, a letter for its step from
 * green to red, its step from blue to yellow. The letter after the dash checks the three: it is the letter whose place is the
 * sum, modulo 23, of each character's value times its position, 1 to 3, with letters counted from 10 on. So one wrong
 * character, or the two figures the wrong way round, gives another letter.
 */
public final class DemoCard {
    /** The short name that drills refer to. */
    public static final String NAME = "slipway";

    private static final int SIZE = 120;
    private static final double DARKEST = 9;
    private static final double LIGHTNESS_STEP = 10.5;
    private static final double COLOUR_STEP = 20;
    private static final int MOST_STEPS = 4;
    private static final String STEPS = "BDFHKMPRT";
    private static final String CHECKS = "ABCDEFGHJKLMNPRSTUVWXYZ";

    private final List<Srgb> colours = new ArrayList<>();
    private final List<String> codes = new ArrayList<>();
    private final double[][] differences = new double[SIZE][SIZE];
    private final Nearest nearest;

    /** Steps on the lattice: up from the darkest, and from grey to red and to yellow. */
    private record Place(int lightness, int red, int yellow) {
        Lab lab() {
            return new Lab(DARKEST + lightness * LIGHTNESS_STEP, red * COLOUR_STEP, yellow * COLOUR_STEP);
        }

        double fromWarmGrey() {
            return Math.hypot(lab().a() - 9, lab().b() - 9);
        }

        String code() {
            String start = "" + lightness + STEPS.charAt(red + MOST_STEPS) + (yellow + MOST_STEPS);
            return start + "-" + check(start);
        }
    }

    public DemoCard() {
        List<Place> places = new ArrayList<>();
        for (int lightness = 0; lightness <= 8; lightness++) {
            for (int red = -MOST_STEPS; red <= MOST_STEPS; red++) {
                for (int yellow = -MOST_STEPS; yellow <= MOST_STEPS; yellow++) {
                    places.add(new Place(lightness, red, yellow));
                }
            }
        }
        places.stream()
                .filter(place -> inside(place.lab()))
                .sorted(Comparator.comparingDouble(Place::fromWarmGrey)
                        .thenComparingInt(Place::lightness)
                        .thenComparingInt(Place::red)
                        .thenComparingInt(Place::yellow))
                .limit(SIZE)
                .sorted(Comparator.comparingInt(Place::lightness)
                        .thenComparingInt(Place::red)
                        .thenComparingInt(Place::yellow))
                .forEach(place -> {
                    colours.add(place.lab().xyzD65().linearRgb().srgb());
                    codes.add(place.code());
                });
        for (int i = 0; i < SIZE; i++) {
            for (int j = 0; j < i; j++) {
                differences[i][j] = Ciede2000.difference(
                        colours.get(i).lab(), colours.get(j).lab());
                differences[j][i] = differences[i][j];
            }
        }
        nearest = new Nearest(this, IntStream.range(0, SIZE).boxed().toList());
    }

    private static boolean inside(Lab lab) {
        LinearRgb linear = lab.xyzD65().linearRgb();
        return inside(linear.red()) && inside(linear.green()) && inside(linear.blue());
    }

    private static boolean inside(double light) {
        return light >= 0 && light <= 1;
    }

    /** The letter that checks the three characters before the dash. */
    public static char check(String start) {
        int sum = 0;
        for (int i = 0; i < start.length(); i++) {
            sum += (i + 1) * Character.getNumericValue(start.charAt(i));
        }
        return CHECKS.charAt(sum % CHECKS.length());
    }

    public int size() {
        return colours.size();
    }

    public Srgb colour(int index) {
        return colours.get(index);
    }

    public String code(int index) {
        return codes.get(index);
    }

    /** The code of the nearest colour by CIEDE2000. */
    public String nearest(Srgb wanted) {
        return code(nearest.of(wanted.red(), wanted.green(), wanted.blue()));
    }

    Nearest nearest() {
        return nearest;
    }

    /** CIEDE2000 between two colours of the card. */
    double difference(int first, int second) {
        return differences[first][second];
    }

    /** The card as the workshop keeps it, its colours named by ISCC-NBS. */
    public ColourCard document() {
        Map<String, CardEntry> entries = new LinkedHashMap<>();
        for (int i = 0; i < size(); i++) {
            String name = ColourNames.isccNbs().nearest(colour(i)).named().name();
            entries.put(
                    code(i),
                    new CardEntry(Optional.of(name), Optional.of(colour(i).hex()), false));
        }
        return new ColourCard(NAME, "Slipway card (invented, for the demo)", entries, List.of());
    }
}
