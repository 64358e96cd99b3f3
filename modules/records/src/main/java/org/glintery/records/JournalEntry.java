package org.glintery.records;

import java.util.List;

/**
 * One change as the journal tells it: the rows it wrote and the names that were new.
 *
 * @param documents as they stood after it, in the order it put them; what it found follows from the entries before
 */
record JournalEntry(
        ChangeRow change,
        NewNames names,
        List<MovementRow> movements,
        List<Document> documents,
        List<BlobChange> blobs) {

    /** Names that were not on disk yet: drills as JSON, spots and texts as they are, each list from a number on. */
    record NewNames(Some drills, Some spots, Some texts) {}

    /** @param first the number of the first value */
    record Some(int first, List<String> values) {}

    record BlobChange(KeptBlob blob, boolean added) {}
}
