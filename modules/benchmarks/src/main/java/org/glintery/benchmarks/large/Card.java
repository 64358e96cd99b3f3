package org.glintery.benchmarks.large;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.glintery.api.ledger.Body;
import org.glintery.api.ledger.Coating;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.CardEntry;

/** A colour card of 450 codes with made-up colours, and drills of it. */
final class Card {

    static final String NAME = "own";
    private static final int CODES = 450;
    private static final int COATED_ONE_IN = 12;
    private static final String CHECK = "ABCDEFGHKMNPRTW";

    private final SplittableRandom random;
    private final List<String> codes = new ArrayList<>();
    private final Map<String, CardEntry> entries = new TreeMap<>();

    Card(SplittableRandom random) {
        this.random = random;
        for (int i = 0; i < CODES; i++) {
            int red = i % 9;
            int green = i / 9 % 10;
            int blue = i / 90;
            String code =
                    (red + 1) + "" + (char) ('A' + green) + (blue + 1) + "-" + CHECK.charAt(i * 7 % CHECK.length());
            String hex = String.format("#%02x%02x%02x", 20 + red * 26, 15 + green * 24, 30 + blue * 50);
            codes.add(code);
            entries.put(code, new CardEntry(Optional.of("Shade " + (i + 1)), Optional.of(hex), false));
        }
    }

    Map<String, CardEntry> entries() {
        return entries;
    }

    /** Another drill of a shape; one in twelve is AB. */
    Drill drill(Shape shape) {
        Coating coating = random.nextInt(COATED_ONE_IN) == 0 ? Coating.AB : Coating.NONE;
        String code = codes.get(random.nextInt(codes.size()));
        return new Drill(shape, Drill.usualSizeHundredths(shape), Body.RESIN, coating, Optional.empty(), NAME, code);
    }
}
