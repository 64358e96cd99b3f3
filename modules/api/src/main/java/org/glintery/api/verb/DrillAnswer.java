package org.glintery.api.verb;

import java.util.Optional;
import org.glintery.api.Preview;
import org.glintery.api.ledger.Body;
import org.glintery.api.ledger.Coating;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Shape;

/** A drill as verbs answer it and scripts write it. */
@Preview(since = "1.0")
public record DrillAnswer(
        Shape shape, double sizeMm, Body body, Coating coating, Optional<String> outline, String card, String code) {

    public static DrillAnswer of(Drill drill) {
        return new DrillAnswer(
                drill.shape(),
                drill.sizeMm(),
                drill.body(),
                drill.coating(),
                drill.outline(),
                drill.card(),
                drill.code());
    }

    public Drill drill() {
        return new Drill(shape, (int) Math.round(sizeMm * 100), body, coating, outline, card, code);
    }
}
