package org.glintery.records;

import org.glintery.api.Json;
import org.glintery.api.workshop.DocumentType;

/** Brings a body of an earlier version up to the version its owner knows. Runs the owner's code. */
final class Upcasting {
    private Upcasting() {}

    static Json.Obj raise(Json.Obj body, int from, DocumentType<?> type) {
        Json.Obj raised = body;
        for (int version = Math.max(1, from); version < type.version(); version++) {
            raised = type.upcasters().get(version - 1).apply(raised);
        }
        return raised;
    }
}
