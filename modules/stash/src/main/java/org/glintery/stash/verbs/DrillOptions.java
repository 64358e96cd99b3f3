package org.glintery.stash.verbs;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.glintery.api.Result;
import org.glintery.api.ledger.Body;
import org.glintery.api.ledger.Coating;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Shape;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.ColourCard;
import org.glintery.api.stash.Stash.KnownDrill;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.VerbCall;
import org.openide.util.NbBundle.Messages;

/** The options by which a verb is told which drill is meant, and how they are understood. */
final class DrillOptions {

    @Messages({
        "DrillOptions.card=its colour card, where several have the code",
        "DrillOptions.shape=round, square or special",
        "DrillOptions.size=its size in millimetres; 2.8 for rounds and 2.5 for others when not said"
    })
    static final List<Param> PARAMS = List.of(
            Param.option("card", "CARD", Bundle.DrillOptions_card()),
            Param.option("shape", "SHAPE", Bundle.DrillOptions_shape()),
            Param.option("size", "MM", Bundle.DrillOptions_size()),
            Param.option("body", "BODY", WordOption.all(Body.class)),
            Param.option("coating", "COATING", WordOption.all(Coating.class)));

    private static final int MOST_NAMED = 12;

    private DrillOptions() {}

    /**
     * The one drill that fits what was said: among those in the given spot, else among all that are known. One that
     * is not known yet is made from what was said. Several that fit are refused as {@code usage} by name.
     */
    @Messages("DrillOptions.blank=A drill needs a card and a code: neither can be blank.")
    static Result<Drill> drill(VerbCall call, String code, Optional<Spot> in) {
        if (code.isBlank() || call.value("card").filter(String::isBlank).isPresent()) {
            return Result.refused(WordOption.USAGE, Bundle.DrillOptions_blank());
        }
        return WordOption.word(call, "shape", Shape.class)
                .then(shape -> WordOption.word(call, "body", Body.class)
                        .then(body -> WordOption.word(call, "coating", Coating.class)
                                .then(coating -> WordOption.millimetres(call, "size", 1_000)
                                        .then(size -> new Said(code, call.value("card"), shape, body, coating, size)
                                                .among(call, in)))));
    }

    private record Said(
            String code,
            Optional<String> card,
            Optional<Shape> shape,
            Optional<Body> body,
            Optional<Coating> coating,
            Optional<Double> sizeMm) {

        @Messages({
            "# {0} - code",
            "# {1} - drills",
            "DrillOptions.several=Several drills are called ''{0}'': {1}. Say which by --card, --shape, --size, --body or --coating."
        })
        Result<Drill> among(VerbCall call, Optional<Spot> in) {
            List<Drill> there = in.filter(spot -> !spot.isBoundary())
                    .map(spot -> call.workshop().view().contents(spot).keySet().stream()
                            .filter(this::fits)
                            .toList())
                    .orElse(List.of());
            if (there.size() == 1) {
                return Result.ok(there.get(0));
            }
            List<Drill> known = StashOfCall.of(call).find(call.workshop().view(), code).stream()
                    .map(KnownDrill::drill)
                    .filter(this::fits)
                    .toList();
            if (known.size() > 1) {
                return Result.refused(
                        WordOption.USAGE,
                        Bundle.DrillOptions_several(
                                code,
                                known.stream()
                                        .limit(MOST_NAMED)
                                        .map(Drill::words)
                                        .collect(Collectors.joining("; "))));
            }
            return Result.ok(known.isEmpty() ? made() : known.get(0));
        }

        private boolean fits(Drill drill) {
            return drill.code().equals(code)
                    && card.filter(c -> !c.equals(drill.card())).isEmpty()
                    && shape.filter(s -> s != drill.shape()).isEmpty()
                    && body.filter(b -> b != drill.body()).isEmpty()
                    && coating.filter(c -> c != drill.coating()).isEmpty()
                    && sizeMm.filter(mm -> hundredths(mm) != drill.sizeHundredths())
                            .isEmpty();
        }

        private Drill made() {
            Shape its = shape.orElse(Shape.ROUND);
            return new Drill(
                    its,
                    sizeMm.map(Said::hundredths).orElse(Drill.usualSizeHundredths(its)),
                    body.orElse(Body.RESIN),
                    coating.orElse(Coating.NONE),
                    Optional.empty(),
                    card.orElse(ColourCard.OWN),
                    code);
        }

        private static int hundredths(double mm) {
            return (int) Math.max(1, Math.round(mm * 100));
        }
    }
}
