package org.glintery.charts.verbs;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.colour.ColourNames;
import org.glintery.colour.NearestName;
import org.glintery.colour.Srgb;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code colour name}: what a colour is called. */
@ServiceProvider(service = Verb.class)
@Messages({
    "ColourNameVerb.summary=Tell what a colour is called",
    "ColourNameVerb.hex=such as #7fffd4; quote it, or leave the # out",
    "# {0} - what was written",
    "ColourNameVerb.none=''{0}'' is no colour. Write its hex, such as #7fffd4.",
    "# {0} - hex",
    "# {1} - name",
    "# {2} - how far away",
    "# {3} - CSS name",
    "# {4} - how far that is",
    "ColourNameVerb.text={0}: {1} (ISCC-NBS, {2} away); CSS {3} ({4} away)."
})
public final class ColourNameVerb implements Verb {

    /** The nearest names of the two open sets. */
    public record Named(String hex, Name isccNbs, Name css) {}

    /**
     * A published name.
     *
     * @param hex of the colour that has this name
     * @param difference CIEDE2000 between the colour and the named one
     */
    public record Name(String name, String hex, double difference) {}

    @Override
    public String name() {
        return "colour name";
    }

    @Override
    public String summary() {
        return Bundle.ColourNameVerb_summary();
    }

    @Override
    public String feature() {
        return "charts";
    }

    @Override
    public List<Param> params() {
        return List.of(Param.positional("hex", "HEX", Bundle.ColourNameVerb_hex()));
    }

    @Override
    public Class<? extends Record> answers() {
        return Named.class;
    }

    @Override
    public VerbResult run(VerbCall call) {
        Optional<Srgb> colour = Srgb.parse(call.need("hex"));
        if (colour.isEmpty()) {
            return VerbResult.wrongUsage(Bundle.ColourNameVerb_none(call.need("hex")));
        }
        Name isccNbs = name(ColourNames.isccNbs().nearest(colour.get()));
        Name css = name(ColourNames.css().nearest(colour.get()));
        String hex = colour.get().hex();
        return VerbResult.said(
                new Named(hex, isccNbs, css),
                Bundle.ColourNameVerb_text(hex, isccNbs.name(), away(isccNbs), css.name(), away(css)));
    }

    private static Name name(NearestName nearest) {
        return new Name(nearest.named().name(), nearest.named().colour().hex(), nearest.difference());
    }

    private static String away(Name name) {
        return String.format(Locale.ROOT, "%.1f", name.difference());
    }
}
