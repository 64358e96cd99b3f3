package org.glintery.records;

import java.io.IOException;

/** The journal is damaged in its middle: opening would lose what stands behind. */
final class DamagedJournalException extends IOException {
    private static final long serialVersionUID = 1L;

    DamagedJournalException() {
        super("the journal is damaged");
    }
}
