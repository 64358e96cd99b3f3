package org.glintery.workbench.spi;

import java.time.Clock;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.function.Function;
import org.glintery.api.Result;
import org.glintery.api.Stable;
import org.glintery.api.workshop.Applied;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.View;
import org.glintery.api.workshop.Workshop;

/** What a screen works at: the open workshop, and ways to change it without holding up the event thread. */
@Stable
public interface Desk {
    Workshop workshop();

    /** The newest view. Any thread. */
    default View view() {
        return workshop().view();
    }

    Clock clock();

    /**
     * Builds a change from the newest view and applies it, both in the background. A refusal and warnings are shown in
     * the window. Event thread.
     *
     * @param then called on the event thread once the change is durable
     */
    void change(Function<View, Result<ChangeSet>> build, Consumer<Applied> then);

    default void change(Function<View, Result<ChangeSet>> build) {
        change(build, applied -> {});
    }

    /** Works in the background, then shows on the event thread. Event thread. */
    <T> void compute(Function<View, T> work, Consumer<T> show);

    /** Shows the page of a piece. Event thread. */
    void openPiece(UUID piece);

    /** Says something in passing, in the window's foot. Event thread. */
    void say(String sentence);
}
