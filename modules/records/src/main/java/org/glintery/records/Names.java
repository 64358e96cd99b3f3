package org.glintery.records;

import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;

/** What rows name by number: drills, spots, and texts such as reasons and document types. */
record Names(NumberedNames<Drill> drills, NumberedNames<Spot> spots, NumberedNames<String> texts) {
    Names() {
        this(new NumberedNames<>(), new NumberedNames<>(), new NumberedNames<>());
    }
}
