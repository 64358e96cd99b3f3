package org.glintery.workbench.sheet;

import java.util.Optional;
import org.glintery.api.Preview;
import org.glintery.colour.ColourVision;
import org.glintery.colour.Srgb;
import org.openide.util.NbBundle.Messages;

/** Whose eyes a sheet is shown for. */
@Preview(since = "1.0")
@Messages({
    "Sight.USUAL=As most people see it",
    "Sight.NO_RED=Without red",
    "Sight.NO_GREEN=Without green",
    "Sight.NO_BLUE=Without blue"
})
public enum Sight {
    USUAL(Optional.empty()),
    NO_RED(Optional.of(ColourVision.PROTAN)),
    NO_GREEN(Optional.of(ColourVision.DEUTAN)),
    NO_BLUE(Optional.of(ColourVision.TRITAN));

    private final Optional<ColourVision> missing;

    Sight(Optional<ColourVision> missing) {
        this.missing = missing;
    }

    /** The colour as these eyes see it, as 0xRRGGBB. */
    int seen(int rgb) {
        return missing.map(vision -> vision.seen(Srgb.ofRgb(rgb), 1).rgb()).orElse(rgb & 0xFFFFFF);
    }

    /** What a menu says. */
    public String words() {
        return switch (this) {
            case USUAL -> Bundle.Sight_USUAL();
            case NO_RED -> Bundle.Sight_NO_RED();
            case NO_GREEN -> Bundle.Sight_NO_GREEN();
            case NO_BLUE -> Bundle.Sight_NO_BLUE();
        };
    }
}
