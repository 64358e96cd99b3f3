package org.glintery.addon.sample;

import java.util.List;
import java.util.UUID;
import org.glintery.api.Json;
import org.glintery.api.time.About;
import org.glintery.api.workshop.DocumentType;

/**
 * What was done for a piece once it was made.
 *
 * @param words such as "Dusted with a soft brush"
 */
public record CareNote(UUID piece, About on, String words) {
    public static final DocumentType<CareNote> TYPE =
            new DocumentType<>("care", "note", 2, CareNote.class, List.of(CareNote::fromVersion1));

    /** Version 1 knew days only, in a field called {@code day}; a day is one of the ways to say when. */
    private static Json.Obj fromVersion1(Json.Obj body) {
        return body.get("day").map(day -> body.without("day").with("on", day)).orElse(body);
    }
}
