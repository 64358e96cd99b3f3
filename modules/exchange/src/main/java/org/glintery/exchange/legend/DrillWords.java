package org.glintery.exchange.legend;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.glintery.api.ledger.Body;
import org.glintery.api.ledger.Coating;
import org.glintery.api.ledger.Shape;

/** Shapes, bodies and coatings in the words that people write. Empty when a word means none of them. */
final class DrillWords {
    private static final Map<String, Shape> SHAPES = Map.of(
            "r", Shape.ROUND,
            "round", Shape.ROUND,
            "circle", Shape.ROUND,
            "s", Shape.SQUARE,
            "sq", Shape.SQUARE,
            "square", Shape.SQUARE,
            "special", Shape.SPECIAL,
            "special shape", Shape.SPECIAL,
            "special shaped", Shape.SPECIAL);
    private static final Map<String, Body> BODIES = Map.of(
            "resin", Body.RESIN,
            "acrylic", Body.RESIN,
            "crystal", Body.CRYSTAL,
            "rhinestone", Body.CRYSTAL,
            "translucent", Body.TRANSLUCENT,
            "transparent", Body.TRANSLUCENT,
            "clear", Body.TRANSLUCENT,
            "glow", Body.GLOW,
            "glow in the dark", Body.GLOW);
    private static final Map<String, Coating> COATINGS = Map.ofEntries(
            Map.entry("none", Coating.NONE),
            Map.entry("no", Coating.NONE),
            Map.entry("plain", Coating.NONE),
            Map.entry("normal", Coating.NONE),
            Map.entry("standard", Coating.NONE),
            Map.entry("ab", Coating.AB),
            Map.entry("aurora borealis", Coating.AB),
            Map.entry("metallic", Coating.METALLIC),
            Map.entry("pearl", Coating.PEARL),
            Map.entry("glitter", Coating.GLITTER),
            Map.entry("matt", Coating.MATT),
            Map.entry("matte", Coating.MATT));

    private DrillWords() {}

    static Optional<Shape> shape(String word) {
        return find(SHAPES, word);
    }

    static Optional<Body> body(String word) {
        return find(BODIES, word);
    }

    static Optional<Coating> coating(String word) {
        return find(COATINGS, word);
    }

    private static <E> Optional<E> find(Map<String, E> words, String written) {
        String plain = written.toLowerCase(Locale.ROOT)
                .replaceAll("[\\s_-]+", " ")
                .strip()
                .replaceFirst(" (drill|diamond|gem|bead)s?$", "");
        E found = words.get(plain);
        return Optional.ofNullable(
                found != null || !plain.endsWith("s") ? found : words.get(plain.substring(0, plain.length() - 1)));
    }
}
