package org.glintery.records;

import java.time.Instant;
import java.util.UUID;

/**
 * One booked action as it is kept; drills, spots and texts by number.
 *
 * @param lot the number of the lot's text, {@link #NONE} without
 * @param basis the number of the {@code Amount.Basis}, by {@link DiskCodes}; {@link #NONE} for a reversal
 * @param said the count that was asked for; {@link #NONE} when unknown
 * @param happened the number of the date's text, {@link #NONE} without
 * @param reverses the sequence number of what this takes back, 0 without
 */
record MovementRow(
        long sequence,
        UUID id,
        Kind kind,
        Effect effect,
        int lot,
        int basis,
        long said,
        long uncertainty,
        int reason,
        int happened,
        Instant recordedAt,
        long reverses,
        long change) {
    static final int NONE = -1;

    /** The kinds of action; their order is part of the schema. */
    enum Kind {
        MOVEMENT,
        REVERSAL,
        STOCKTAKE
    }
}
