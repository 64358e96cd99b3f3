package org.glintery.testkit.contract;

import java.util.List;
import java.util.Optional;
import org.glintery.api.Json;
import org.glintery.api.workshop.DocumentType;

/** A kind of document in three versions, as the contracts need one: a width, later in millimetres, later with a note. */
final class Gauge {
    static final String OWNER = "contract";

    record First(int width) {
        static final DocumentType<First> TYPE = DocumentType.of(OWNER, "gauge", First.class);
    }

    record Second(int widthMm, Optional<Part> part) {
        static final DocumentType<Second> TYPE =
                new DocumentType<>(OWNER, "gauge", 2, Second.class, List.of(Gauge::renamed));
    }

    record Third(int widthMm, Optional<Part> part, String note) {
        static final DocumentType<Third> TYPE =
                new DocumentType<>(OWNER, "gauge", 3, Third.class, List.of(Gauge::renamed, Gauge::noted));
    }

    record Part(String name) {}

    private Gauge() {}

    private static Json.Obj renamed(Json.Obj body) {
        return body.without("width").with("widthMm", body.get("width").orElse(Json.Num.of(0)));
    }

    private static Json.Obj noted(Json.Obj body) {
        return body.with("note", new Json.Text(""));
    }
}
