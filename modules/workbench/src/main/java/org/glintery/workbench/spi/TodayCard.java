package org.glintery.workbench.spi;

import org.glintery.api.ExtensionPoint;
import org.glintery.api.Stable;
import org.glintery.api.workshop.View;

/** Extension point: a card of the Today window. Methods are called on the event thread. */
@Stable
@ExtensionPoint
public interface TodayCard {
    String title();

    /** Its place among the cards, lowest first. */
    int position();

    /** Whether there is anything to say; quick. */
    default boolean offered(View view) {
        return true;
    }

    ScreenPart<?> create(Desk desk);
}
