package org.glintery.api.workshop;

import org.glintery.api.ExtensionPoint;
import org.glintery.api.Stable;

/**
 * Extension point: something that is computed from a view alone, once a view, and kept with it. It is its own key: keep it in
 * a constant, or make it a record whose components are what it depends on besides.
 */
@Stable
@ExtensionPoint
@FunctionalInterface
public interface Derived<T> {

    /** Any thread. May ask the view for other derived things, but not for itself. */
    T from(View view);
}
