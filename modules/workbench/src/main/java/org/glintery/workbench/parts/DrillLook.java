package org.glintery.workbench.parts;

import java.awt.Color;
import java.util.Locale;
import java.util.Optional;
import org.glintery.api.Stable;
import org.glintery.api.ledger.Body;
import org.glintery.api.ledger.Coating;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.CardEntry;
import org.glintery.api.stash.ColourCard;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/**
 * What a drill looks like. Pure; any thread.
 *
 * @param colour empty when it is not known, which is shown as such and never as a grey
 * @param rough whether the colour is only near
 */
@Stable
public record DrillLook(Shape shape, Body body, Coating coating, Optional<Color> colour, boolean rough) {

    /** The look of a drill with what its card says. */
    public static DrillLook of(View view, Drill drill) {
        return of(drill, ColourCard.entry(view, drill.card(), drill.code()).orElse(CardEntry.UNKNOWN));
    }

    public static DrillLook of(Drill drill, CardEntry entry) {
        return new DrillLook(
                drill.shape(), drill.body(), drill.coating(), entry.hex().flatMap(DrillLook::read), entry.rough());
    }

    /** In words, for who does not see it: "round, AB, colour #a0b0c0". */
    @Messages({
        "# {0} - shape, body and coating",
        "# {1} - the colour",
        "DrillLook.words={0}, {1}",
        "# {0} - hex",
        "DrillLook.colour=colour {0}",
        "# {0} - hex",
        "DrillLook.rough=colour near {0}",
        "DrillLook.unknown=colour not known",
        "DrillLook.ROUND=round",
        "DrillLook.SQUARE=square",
        "DrillLook.SPECIAL=special shape",
        "DrillLook.RESIN=",
        "DrillLook.CRYSTAL=, crystal",
        "DrillLook.TRANSLUCENT=, translucent",
        "DrillLook.GLOW=, glow",
        "DrillLook.NONE=",
        "DrillLook.AB=, AB",
        "DrillLook.METALLIC=, metallic",
        "DrillLook.PEARL=, pearl",
        "DrillLook.GLITTER=, glitter",
        "DrillLook.MATT=, matt"
    })
    public String words() {
        String kind = word(shape) + word(body) + word(coating);
        String said = colour.map(c -> String.format(Locale.ROOT, "#%06x", c.getRGB() & 0xffffff))
                .map(hex -> rough ? Bundle.DrillLook_rough(hex) : Bundle.DrillLook_colour(hex))
                .orElseGet(Bundle::DrillLook_unknown);
        return Bundle.DrillLook_words(kind, said);
    }

    private static String word(Enum<?> part) {
        return org.openide.util.NbBundle.getMessage(DrillLook.class, "DrillLook." + part.name());
    }

    private static Optional<Color> read(String hex) {
        return hex.matches("#[0-9a-fA-F]{6}") ? Optional.of(Color.decode(hex)) : Optional.empty();
    }
}
