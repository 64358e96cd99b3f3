package org.glintery.charts.verbs;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.colour.Ciede2000;
import org.glintery.colour.Lab;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code colour compare}: how far apart two colours look. */
@ServiceProvider(service = Verb.class)
@Messages({
    "ColourCompareVerb.summary=Tell how far apart two colours look",
    "ColourCompareVerb.first=L,a,b against the D65 white, or hex",
    "ColourCompareVerb.second=the other one",
    "# {0} - what was written",
    "ColourCompareVerb.none=''{0}'' is no colour. Write three numbers as L,a,b, with L from 0 to 100, a from -500 to 500 and b from -200 to 200, or hex such as #7fffd4.",
    "# {0} - number",
    "# {1} - words",
    "ColourCompareVerb.text={0} (CIEDE2000): {1}.",
    "ColourCompareVerb.matchSame=the same to the eye",
    "ColourCompareVerb.matchClose=a close match",
    "ColourCompareVerb.matchNear=seen as different side by side",
    "ColourCompareVerb.matchFar=clearly different"
})
public final class ColourCompareVerb implements Verb {

    /**
     * What came out.
     *
     * @param difference CIEDE2000
     * @param words what that means to the eye
     */
    public record Compared(Lab first, Lab second, double difference, String words) {}

    @Override
    public String name() {
        return "colour compare";
    }

    @Override
    public String summary() {
        return Bundle.ColourCompareVerb_summary();
    }

    @Override
    public String feature() {
        return "charts";
    }

    @Override
    public List<Param> params() {
        return List.of(
                Param.positional("first", "L,a,b", Bundle.ColourCompareVerb_first()),
                Param.positional("second", "L,a,b", Bundle.ColourCompareVerb_second()));
    }

    @Override
    public Class<? extends Record> answers() {
        return Compared.class;
    }

    @Override
    public VerbResult run(VerbCall call) {
        Optional<Lab> first = WrittenColour.lab(call.need("first"));
        Optional<Lab> second = WrittenColour.lab(call.need("second"));
        if (first.isEmpty() || second.isEmpty()) {
            return VerbResult.wrongUsage(
                    Bundle.ColourCompareVerb_none(call.need(first.isEmpty() ? "first" : "second")));
        }
        double difference = Ciede2000.difference(first.get(), second.get());
        String words = words(difference);
        String rounded = String.format(Locale.ROOT, "%.4f", difference);
        return VerbResult.said(
                new Compared(first.get(), second.get(), difference, words),
                Bundle.ColourCompareVerb_text(rounded, words));
    }

    /** Where the words change is common practice, no published source; about 1 is just seen side by side. */
    private static String words(double difference) {
        if (difference < 1) {
            return Bundle.ColourCompareVerb_matchSame();
        }
        if (difference < 3) {
            return Bundle.ColourCompareVerb_matchClose();
        }
        return difference < 8 ? Bundle.ColourCompareVerb_matchNear() : Bundle.ColourCompareVerb_matchFar();
    }
}
