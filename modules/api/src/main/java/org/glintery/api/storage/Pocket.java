package org.glintery.api.storage;

import java.util.Optional;
import java.util.UUID;
import org.glintery.api.PlainText;
import org.glintery.api.Stable;

/**
 * One compartment of a holder.
 *
 * @param name its label, such as {@code B4}
 * @param capacity drills it takes of the usual size; empty when not known
 * @param mixed whether several kinds may lie in it
 */
@Stable
public record Pocket(UUID id, String name, Optional<Long> capacity, boolean mixed) {
    public Pocket {
        name = PlainText.line(name);
    }
}
