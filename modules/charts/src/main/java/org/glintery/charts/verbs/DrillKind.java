package org.glintery.charts.verbs;

import java.util.List;
import java.util.Optional;
import org.glintery.api.ledger.Body;
import org.glintery.api.ledger.Coating;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Shape;
import org.glintery.api.verb.Param;
import org.openide.util.NbBundle.Messages;

/** Of what kind all drills of a chart are, as options. */
@Messages({
    "DrillKind.shape=round, square or special; square when not said",
    "DrillKind.size=the drills' size in millimetres; 2.8 for rounds and 2.5 for others when not said",
    "DrillKind.body=resin, crystal, translucent or glow; resin when not said",
    "DrillKind.coating=none, ab, metallic, pearl, glitter or matt; none when not said"
})
record DrillKind(Shape shape, int sizeHundredths, Body body, Coating coating) {

    private static final double LARGEST_MM = 1_000;

    static final List<Param> PARAMS = List.of(
            Param.option("shape", "SHAPE", Bundle.DrillKind_shape()),
            Param.option("size", "MM", Bundle.DrillKind_size()),
            Param.option("body", "BODY", Bundle.DrillKind_body()),
            Param.option("coating", "COATING", Bundle.DrillKind_coating()));

    static DrillKind of(OptionNumbers numbers) {
        Shape shape = numbers.word("shape", Shape.class).orElse(Shape.SQUARE);
        int size = numbers.number("size", 0.01, LARGEST_MM)
                .map(mm -> (int) Math.round(100 * mm))
                .orElse(Drill.usualSizeHundredths(shape));
        return new DrillKind(
                shape,
                size,
                numbers.word("body", Body.class).orElse(Body.RESIN),
                numbers.word("coating", Coating.class).orElse(Coating.NONE));
    }

    Drill drill(String card, String code) {
        return new Drill(shape, sizeHundredths, body, coating, Optional.empty(), card, code);
    }
}
