package org.glintery.api.workshop;

import java.util.UUID;
import org.glintery.api.Stable;
import org.glintery.api.ledger.LedgerAction;

/** One step of a change set. Steps are carried out in order; the first that can't be refuses the whole. */
@Stable
public sealed interface Operation {

    /** Puts a document, new or in place of the old one. */
    record Put<T extends Record>(DocumentType<T> type, UUID id, T value) implements Operation {}

    /** Puts a document as it is, without its record class: for imports. */
    record PutRaw(RawDocument document) implements Operation {}

    record Remove(DocRef ref) implements Operation {}

    record Post(LedgerAction action) implements Operation {}

    /** Adds a picture or other bytes, at most 64 MiB. Adding what is there already does nothing. */
    record AddBlob(Blob blob) implements Operation {}
}
