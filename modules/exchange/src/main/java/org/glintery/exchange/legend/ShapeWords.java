package org.glintery.exchange.legend;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.glintery.api.ledger.Shape;

/** A shape as people write it, with a size or an outline where they say one: "round 2.8 mm", "special (drop)". */
record ShapeWords(Shape shape, Optional<Integer> sizeHundredths, Optional<String> outline) {
    private static final Pattern SIZED =
            Pattern.compile("(?i)(?<shape>\\D+?)[\\s(,:]*(?<size>[\\d.,]+\\s*(?:mm|cm))\\)?");
    private static final Pattern OUTLINED =
            Pattern.compile("(?i)special(?:[ -]shaped?)?\\s*(?:[:,/(–—-])\\s*(?<outline>[^()]*[^()\\s])\\s*\\)?");

    static Optional<ShapeWords> of(String written) {
        Matcher outlined = OUTLINED.matcher(written);
        if (outlined.matches()) {
            return Optional.of(new ShapeWords(Shape.SPECIAL, Optional.empty(), Optional.of(outlined.group("outline"))));
        }
        Matcher sized = SIZED.matcher(written);
        if (sized.matches()) {
            Optional<Integer> size = DrillWords.sizeHundredths(sized.group("size"));
            return size.flatMap(hundredths ->
                    DrillWords.shape(sized.group("shape")).map(shape -> new ShapeWords(shape, size, Optional.empty())));
        }
        return DrillWords.shape(written).map(shape -> new ShapeWords(shape, Optional.empty(), Optional.empty()));
    }
}
