package org.glintery.workbench.shelves;

import java.nio.file.Path;
import java.util.Optional;
import org.glintery.api.exchange.LegendReader.Assumed;
import org.glintery.api.exchange.LegendReader.Reading;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.ColourCard;
import org.glintery.api.stash.Source;
import org.glintery.api.workshop.View;

/**
 * A legend that was read for a new kit. "Half a bag" is as many drills as the bags of its source hold, and a line without a
 * shape has that of the kit, so what the form says later may ask for another reading. Immutable.
 *
 * @param by what was assumed of what the file does not say
 */
record ReadLegend(Path file, Assumed by, Reading reading) {

    static Assumed assumed(View view, Optional<Shape> shape, Optional<String> source) {
        return new Assumed(ColourCard.OWN, shape, Source.drillsPerBag(view, source));
    }

    boolean holdsFor(Assumed now) {
        return by.equals(now);
    }

    /** What may be taken in. */
    Optional<Reading> whole() {
        return reading.badRows().isEmpty() ? Optional.of(reading) : Optional.empty();
    }
}
