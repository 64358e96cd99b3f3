package org.glintery.exchange.kit;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Body;
import org.glintery.api.ledger.Coating;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.CardEntry;
import org.glintery.api.stash.ColourCard;
import org.glintery.api.stash.LegendLine;

/** A line of a legend as a file tells it, with what is known of its code. */
record LineInFile(
        String symbol,
        String code,
        Optional<String> card,
        Optional<String> name,
        Optional<String> hex,
        Optional<Boolean> rough,
        Optional<Shape> shape,
        Optional<BigDecimal> sizeMm,
        Optional<Body> body,
        Optional<Coating> coating,
        Optional<String> outline,
        Optional<Long> needed,
        Optional<Long> supplied,
        Optional<Amount.Basis> suppliedBasis,
        Optional<Long> suppliedUncertainty,
        Optional<Integer> bags,
        Optional<Map<String, String>> extras) {

    static LineInFile of(LegendLine line, CardEntry entry) {
        Drill drill = line.drill();
        Amount supplied = line.supplied();
        return new LineInFile(
                line.symbol(),
                drill.code(),
                Optional.of(drill.card()),
                entry.name(),
                entry.hex(),
                Optional.of(entry.rough()).filter(rough -> rough),
                Optional.of(drill.shape()),
                Optional.of(BigDecimal.valueOf(drill.sizeHundredths(), 2)),
                Optional.of(drill.body()),
                Optional.of(drill.coating()),
                drill.outline(),
                line.needed(),
                supplied.count(),
                Optional.of(supplied.basis()).filter(basis -> supplied.known() && basis != Amount.Basis.COUNTED),
                Optional.of(supplied.uncertainty()).filter(uncertainty -> supplied.known() && uncertainty > 0),
                line.bags(),
                Optional.of(line.extras()).filter(extras -> !extras.isEmpty()));
    }

    String cardOrOwn() {
        return card.orElse(ColourCard.OWN);
    }

    CardEntry entry() {
        return new CardEntry(name, hex, rough.orElse(false));
    }

    /** @param usual the shape where the line does not say */
    LegendLine line(Shape usual) {
        Shape ownShape = shape.orElse(usual);
        var drill = new Drill(
                ownShape,
                sizeMm.map(size -> size.movePointRight(2).intValueExact()).orElse(Drill.usualSizeHundredths(ownShape)),
                body.orElse(Body.RESIN),
                coating.orElse(Coating.NONE),
                outline,
                cardOrOwn(),
                code);
        Amount amount = supplied.isEmpty()
                ? Amount.unknown()
                : new Amount(suppliedBasis.orElse(Amount.Basis.COUNTED), supplied, suppliedUncertainty.orElse(0L));
        return new LegendLine(symbol, drill, needed, amount, bags, extras.orElse(Map.of()));
    }
}
