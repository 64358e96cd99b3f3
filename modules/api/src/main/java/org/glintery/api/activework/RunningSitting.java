package org.glintery.api.activework;

import java.time.LocalDateTime;
import java.util.Optional;
import org.glintery.api.PlainText;
import org.glintery.api.Stable;
import org.glintery.api.workshop.DocumentType;

/** A sitting that goes on at this moment. The document has the piece's id; it outlives a restart. */
@Stable
public record RunningSitting(
        LocalDateTime startedAt, String zone, Optional<LocalDateTime> pausedSince, int pausedMinutes) {
    public static final DocumentType<RunningSitting> TYPE =
            DocumentType.of("activework", "running", RunningSitting.class);

    public RunningSitting {
        zone = PlainText.line(zone);
    }
}
