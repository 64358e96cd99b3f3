package org.glintery.records;

import org.glintery.api.workshop.DocRef;

/** Whose documents, and of which type. */
record DocumentKind(String owner, String type) {
    static DocumentKind of(DocRef ref) {
        return new DocumentKind(ref.owner(), ref.type());
    }
}
