package org.glintery.workbench.spi;

import javax.swing.JComponent;
import org.glintery.api.ExtensionPoint;
import org.glintery.api.Stable;
import org.glintery.api.workshop.View;

/**
 * A part of a screen. The host calls {@link #prepare} in the background and then {@link #show} on the event thread,
 * first when the part appears and again after every change.
 *
 * @param <M> what there is to show: an immutable value, made without Swing
 */
@Stable
@ExtensionPoint
public interface ScreenPart<M> {

    /** Computes what to show. A background thread; at most 5 s; must depend on the view alone. */
    M prepare(View view);

    /** The component, always the same one. Event thread. */
    JComponent component();

    /** Shows it. Event thread; at most 100 ms. What the user is typing must not be lost. */
    void show(M model);
}
