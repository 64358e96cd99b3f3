package org.glintery.api.workshop;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Stable;

/**
 * One applied change.
 *
 * @param undoes the change whose inverse this is, for an undo or a redo
 */
@Stable
public record HistoryLine(
        long revision, UUID change, String sentence, Instant recordedAt, Kind kind, Optional<UUID> undoes) {

    /** How the change came about. */
    public enum Kind {
        DONE,
        UNDO,
        REDO
    }
}
