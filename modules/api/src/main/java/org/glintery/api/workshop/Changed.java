package org.glintery.api.workshop;

import java.util.Set;
import org.glintery.api.Stable;

/**
 * Something was committed. Bursts coalesce: several changes may arrive as one.
 *
 * @param revision the newest revision it tells of
 * @param documents the documents that were put or removed
 * @param ledger whether anything was booked
 */
@Stable
public record Changed(long revision, Set<DocRef> documents, boolean ledger) {
    public Changed {
        documents = Set.copyOf(documents);
    }
}
