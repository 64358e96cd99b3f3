package org.glintery.demo;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.glintery.api.stash.CardEntry;
import org.glintery.api.stash.ColourCard;
import org.glintery.colour.ColourNames;
import org.glintery.colour.Lab;
import org.glintery.colour.LinearRgb;
import org.glintery.colour.Srgb;

/**
 * The invented card of the demo: 120 colours on a regular lattice of Lab. A code is the step of lightness, a letter for
 * the hue and the step of chroma, then a check letter: the sum of the first characters' places, each times its position,
 * modulo 23, in an alphabet without I, O and Q.
 */
final class DemoCard {
    static final String NAME = "slipway";
    private static final int SIZE = 120;
    private static final String LETTERS = "ABCDEFGHJKLMNPRSTUVWXYZ";
    private static final String PLACES = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";

    private final List<Srgb> colours = new ArrayList<>();
    private final List<String> codes = new ArrayList<>();

    private record Place(int l, int a, int b) {
        double chroma() {
            return Math.hypot(a, b);
        }
    }

    DemoCard() {
        List<Place> places = new ArrayList<>();
        for (int l = 8; l <= 96; l += 11) {
            for (int a = -60; a <= 72; a += 18) {
                for (int b = -54; b <= 72; b += 18) {
                    places.add(new Place(l, a, b));
                }
            }
        }
        places.stream()
                .filter(place -> shown(place).isPresent())
                .sorted(Comparator.comparingDouble(Place::chroma)
                        .thenComparingInt(Place::l)
                        .thenComparingInt(Place::a)
                        .thenComparingInt(Place::b))
                .limit(SIZE)
                .forEach(place -> {
                    colours.add(shown(place).orElseThrow());
                    codes.add(code(place));
                });
    }

    private static Optional<Srgb> shown(Place place) {
        LinearRgb linear = new Lab(place.l(), place.a(), place.b()).xyzD65().linearRgb();
        boolean inside = inside(linear.red()) && inside(linear.green()) && inside(linear.blue());
        return inside ? Optional.of(linear.srgb()) : Optional.empty();
    }

    private static boolean inside(double light) {
        return light >= -1e-6 && light <= 1 + 1e-6;
    }

    private static String code(Place place) {
        String start = "" + (place.l() - 8) / 11 + PLACES.charAt(10 + (place.a() + 60) / 18) + (place.b() + 54) / 18;
        int sum = 0;
        for (int i = 0; i < start.length(); i++) {
            sum += (i + 1) * PLACES.indexOf(start.charAt(i));
        }
        return start + "-" + LETTERS.charAt(sum % LETTERS.length());
    }

    int size() {
        return colours.size();
    }

    Srgb colour(int index) {
        return colours.get(index);
    }

    String code(int index) {
        return codes.get(index);
    }

    /** The nearest of the card to a colour. */
    int nearest(Lab colour) {
        int best = 0;
        double least = Double.MAX_VALUE;
        for (int i = 0; i < colours.size(); i++) {
            double difference = org.glintery.colour.Ciede2000.difference(colour, colours.get(i).lab());
            if (difference < least) {
                least = difference;
                best = i;
            }
        }
        return best;
    }

    ColourCard document() {
        Map<String, CardEntry> entries = new LinkedHashMap<>();
        for (int i = 0; i < size(); i++) {
            String name = ColourNames.isccNbs().nearest(colour(i)).named().name();
            entries.put(code(i), new CardEntry(Optional.of(name), Optional.of(colour(i).hex()), false));
        }
        return new ColourCard(NAME, "Slipway card (demo)", entries, List.of());
    }
}
