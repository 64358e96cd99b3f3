package org.glintery.api.stash;

import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.PlainText;
import org.glintery.api.Preview;
import org.glintery.api.workshop.ByName;
import org.glintery.api.workshop.DocumentType;
import org.glintery.api.workshop.View;

/**
 * A shop or whoever kits and drills come from. Its document id follows from its name.
 *
 * @param drillsPerBag what its bags hold, as near as is known
 */
@Preview(since = "1.0")
public record Source(String name, int drillsPerBag) {

    public static final DocumentType<Source> TYPE = DocumentType.of("stash", "source", Source.class);

    /** What a bag holds where its source has not said otherwise. Common practice, no published source. */
    public static final int USUAL_DRILLS_PER_BAG = 200;

    public Source {
        name = PlainText.line(name);
        if (drillsPerBag <= 0 || drillsPerBag > 1_000_000) {
            throw new IllegalArgumentException("bag size out of range: " + drillsPerBag);
        }
    }

    public static UUID idOf(String name) {
        return ByName.idFor(TYPE, PlainText.line(name).strip().toLowerCase(Locale.ROOT));
    }

    /** The bag size of a source, or the usual one. */
    public static int drillsPerBag(View view, Optional<String> source) {
        return source.flatMap(name -> view.find(TYPE, idOf(name)))
                .map(stored -> stored.value().drillsPerBag())
                .orElse(USUAL_DRILLS_PER_BAG);
    }
}
