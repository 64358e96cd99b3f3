package org.glintery.api.storage;

import java.util.Optional;
import java.util.UUID;
import org.glintery.api.PlainText;
import org.glintery.api.Stable;
import org.glintery.api.workshop.DocumentType;

/** Where anything but drills is: a shelf, a drawer, a wall. */
@Stable
public record KeepingPlace(String name, Optional<UUID> inside, String notes) {
    public static final DocumentType<KeepingPlace> TYPE = DocumentType.of("storage", "place", KeepingPlace.class);

    public KeepingPlace {
        name = PlainText.line(name);
        notes = PlainText.lines(notes);
    }
}
