package org.glintery.records;

import java.time.Instant;
import java.util.UUID;
import org.glintery.api.workshop.HistoryLine;

/**
 * One applied change as it is kept; its number is the revision it made.
 *
 * @param undoes the number of the change it takes back, 0 without
 */
record ChangeRow(
        long number,
        UUID id,
        String sentence,
        Instant recordedAt,
        HistoryLine.Kind kind,
        long undoes,
        long firstMovement,
        int movements) {}
