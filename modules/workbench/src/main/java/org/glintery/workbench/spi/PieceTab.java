package org.glintery.workbench.spi;

import java.util.UUID;
import org.glintery.api.ExtensionPoint;
import org.glintery.api.Stable;
import org.glintery.api.workshop.View;

/** Extension point: a tab of the piece page. Methods are called on the event thread. */
@Stable
@ExtensionPoint
public interface PieceTab {
    String title();

    /** Its place among the tabs, lowest first. Story 100, legend 200, sittings 300, finish 500, frame 600. */
    int position();

    /** Whether it is offered for this piece; quick. */
    default boolean offered(View view, UUID piece) {
        return true;
    }

    ScreenPart<?> create(Desk desk, UUID piece);
}
