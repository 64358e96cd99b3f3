package org.glintery.club;

import java.util.UUID;
import org.glintery.api.workshop.ByName;
import org.glintery.api.workshop.DocumentType;

/**
 * A document of the room as it is held in the workshop.
 *
 * @param text signed, as it lies in the room
 */
record HeldDocument(String text) {
    static final DocumentType<HeldDocument> TYPE = DocumentType.of("club", "held", HeldDocument.class);

    static UUID idOf(DocKey key) {
        return ByName.idFor(TYPE, key.toString());
    }
}
