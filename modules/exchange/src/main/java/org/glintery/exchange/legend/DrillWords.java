package org.glintery.exchange.legend;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.glintery.api.ledger.Body;
import org.glintery.api.ledger.Coating;
import org.glintery.api.ledger.Shape;

/** Shapes, bodies and coatings in the words that people write. Empty when a word means none of them. */
final class DrillWords {
    private static final Map<String, Shape> SHAPES = Map.ofEntries(
            Map.entry("r", Shape.ROUND),
            Map.entry("rd", Shape.ROUND),
            Map.entry("rnd", Shape.ROUND),
            Map.entry("round", Shape.ROUND),
            Map.entry("circle", Shape.ROUND),
            Map.entry("circular", Shape.ROUND),
            Map.entry("s", Shape.SQUARE),
            Map.entry("sq", Shape.SQUARE),
            Map.entry("sqr", Shape.SQUARE),
            Map.entry("square", Shape.SQUARE),
            Map.entry("special", Shape.SPECIAL),
            Map.entry("special shape", Shape.SPECIAL),
            Map.entry("special shaped", Shape.SPECIAL));
    private static final Map<String, Body> BODIES = Map.of(
            "resin", Body.RESIN,
            "plastic", Body.RESIN,
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
            Map.entry("a b", Coating.AB),
            Map.entry("aurora", Coating.AB),
            Map.entry("ab (aurora borealis)", Coating.AB),
            Map.entry("aurora borealis (ab)", Coating.AB),
            Map.entry("metallic", Coating.METALLIC),
            Map.entry("metal", Coating.METALLIC),
            Map.entry("pearl", Coating.PEARL),
            Map.entry("pearlescent", Coating.PEARL),
            Map.entry("glitter", Coating.GLITTER),
            Map.entry("glittery", Coating.GLITTER),
            Map.entry("matt", Coating.MATT),
            Map.entry("matte", Coating.MATT));

    private static final String NUMBER = "\\d{0,4}(?:[.,]\\d{1,9})?(?<=\\d)";
    private static final Pattern SIZE = Pattern.compile("(?:ø|⌀|diameter)?\\s*(?<side>" + NUMBER
            + ")(?:\\s*[x×*]\\s*(?<other>" + NUMBER + "))?\\s*(?<unit>mm|cm)?\\.?");
    private static final BigDecimal MOST_HUNDREDTHS = BigDecimal.valueOf(100_000);

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

    /** A size such as "2.8", "2,8 mm", "Ø 2.8", "0.28 cm" or "2.5 x 2.5 mm", in whole hundredths of a millimetre. */
    static Optional<Integer> sizeHundredths(String written) {
        Matcher size = SIZE.matcher(written.strip().toLowerCase(Locale.ROOT));
        if (!size.matches()
                || size.group("other") != null && !millimetres(size, "other").equals(millimetres(size, "side"))) {
            return Optional.empty();
        }
        BigDecimal hundredths = millimetres(size, "side").movePointRight(2).stripTrailingZeros();
        boolean fits = hundredths.signum() > 0 && hundredths.scale() <= 0 && hundredths.compareTo(MOST_HUNDREDTHS) <= 0;
        return fits ? Optional.of(hundredths.intValueExact()) : Optional.empty();
    }

    private static BigDecimal millimetres(Matcher size, String group) {
        BigDecimal number = new BigDecimal(size.group(group).replace(',', '.'));
        return "cm".equals(size.group("unit")) ? number.movePointRight(1) : number;
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
