package org.glintery.charts.verbs;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.glintery.api.Result;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Body;
import org.glintery.api.ledger.Coating;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.Stash;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.VerbCall;
import org.openide.util.NbBundle.Messages;

/** Which drills of one kind a workshop has of a card, and how many of each may be counted on. */
@Messages({
    "InTheHouse.shape=with house: round, square or special; square when not said",
    "InTheHouse.size=with house: their size in millimetres; 2.8 for rounds and 2.5 for others when not said",
    "InTheHouse.body=with house: resin, crystal, translucent or glow; resin when not said",
    "InTheHouse.coating=with house: none, ab, metallic, pearl, glitter or matt; none when not said",
    "InTheHouse.off=What is in the house is not known: the stash is switched off. Give a table instead of house."
})
final class InTheHouse {

    static final List<Param> PARAMS = List.of(
            Param.option("shape", "SHAPE", Bundle.InTheHouse_shape()),
            Param.option("size", "MM", Bundle.InTheHouse_size()),
            Param.option("body", "BODY", Bundle.InTheHouse_body()),
            Param.option("coating", "COATING", Bundle.InTheHouse_coating()));

    private static final double LARGEST_MM = 1_000;
    /** So many standard uncertainties are not counted on: then 39 of 40 amounts hold. */
    private static final int UNSURE = 2;

    private final Shape shape;
    private final int sizeHundredths;
    private final Body body;
    private final Coating coating;

    InTheHouse(OptionNumbers numbers) {
        shape = numbers.word("shape", Shape.class).orElse(Shape.SQUARE);
        sizeHundredths = numbers.number("size", 0.01, LARGEST_MM)
                .map(mm -> (int) Math.round(100 * mm))
                .orElse(Drill.usualSizeHundredths(shape));
        body = numbers.word("body", Body.class).orElse(Body.RESIN);
        coating = numbers.word("coating", Coating.class).orElse(Coating.NONE);
    }

    /** By code of the card. What is reserved, kept for repairs, unsure or uncounted is not there. */
    Result<Map<String, Long>> counts(VerbCall call, String card) {
        Optional<Stash> stash = call.workshop().find(Stash.class);
        if (stash.isEmpty()) {
            return Result.refused("no-stash", Bundle.InTheHouse_off());
        }
        Map<String, Long> counts = new HashMap<>();
        for (var known : stash.get().find(call.workshop().view(), "")) {
            if (known.drill().card().equals(card) && isOfThisKind(known.drill())) {
                counts.merge(known.drill().code(), sure(known.available()), Long::sum);
            }
        }
        return Result.ok(counts);
    }

    private boolean isOfThisKind(Drill drill) {
        return drill.shape() == shape
                && drill.sizeHundredths() == sizeHundredths
                && drill.body() == body
                && drill.coating() == coating
                && drill.outline().isEmpty();
    }

    private static long sure(Balance available) {
        return Math.max(0, available.count() - UNSURE * available.uncertainty());
    }
}
