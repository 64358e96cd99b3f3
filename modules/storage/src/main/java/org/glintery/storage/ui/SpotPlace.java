package org.glintery.storage.ui;

import java.awt.Point;
import java.util.Optional;
import org.glintery.api.ledger.Spot;

/** A component that shows places in which drills lie. Event thread. */
interface SpotPlace {

    /** The place that is selected, when drills lie in it. */
    Optional<Spot> picked();

    /** The place under a point of the component. */
    Optional<Spot> at(Point point);

    /** The place the keyboard is at. */
    Optional<Spot> cursor();
}
