package org.glintery.api.workshop;

import java.util.UUID;
import org.glintery.api.Stable;

/**
 * The key of a document.
 *
 * @param owner the feature or add-on that owns the type, such as {@code stash}
 * @param type the kind of document, such as {@code piece}
 */
@Stable
public record DocRef(String owner, String type, UUID id) {
    @Override
    public String toString() {
        return owner + "/" + type + "/" + id;
    }
}
