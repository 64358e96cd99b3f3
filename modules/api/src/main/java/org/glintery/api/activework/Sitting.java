package org.glintery.api.activework;

import java.time.LocalDateTime;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.PlainText;
import org.glintery.api.Stable;
import org.glintery.api.time.About;
import org.glintery.api.workshop.DocumentType;

/**
 * One session of work at a piece.
 *
 * @param day when, as exactly as is known
 * @param startedAt local time, where known
 * @param zone the time zone of {@code startedAt}, such as {@code Europe/Oslo}
 * @param minutes worked, pauses left out
 * @param pausedMinutes spent pausing
 * @param where the place, such as "kitchen table"
 */
@Stable
public record Sitting(
        UUID piece,
        About day,
        Optional<LocalDateTime> startedAt,
        Optional<String> zone,
        Optional<Integer> minutes,
        int pausedMinutes,
        Laid laid,
        Optional<String> where,
        String note) {
    public static final DocumentType<Sitting> TYPE = DocumentType.of("activework", "sitting", Sitting.class);

    public Sitting {
        zone = PlainText.line(zone);
        where = PlainText.line(where);
        note = PlainText.lines(note);
    }
}
