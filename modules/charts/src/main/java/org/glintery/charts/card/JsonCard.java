package org.glintery.charts.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.glintery.api.Json;

/**
 * A card as JSON: a list of entries with code, name and hex; or an object that has such a list as colours, entries or
 * lines; or an object whose keys are the codes.
 */
final class JsonCard {

    private JsonCard() {}

    static List<CardRow> rows(Json json) {
        if (json instanceof Json.Arr list) {
            return ofList(list);
        }
        if (!(json instanceof Json.Obj object)) {
            return List.of();
        }
        Optional<Json> held = Stream.of("colours", "colors", "entries", "lines")
                .flatMap(name -> object.get(name).stream())
                .findFirst();
        if (held.isPresent()) {
            return held.get() instanceof Json.Arr list
                    ? ofList(list)
                    : held.get() instanceof Json.Obj byCode ? ofObject(byCode) : List.of();
        }
        return ofObject(object);
    }

    private static List<CardRow> ofList(Json.Arr list) {
        List<CardRow> rows = new ArrayList<>();
        for (Json item : list.items()) {
            int place = rows.size() + 1;
            rows.add(
                    item instanceof Json.Obj entry
                            ? row(place, text(entry, "code"), entry)
                            : new CardRow(place, "", "", ""));
        }
        return rows;
    }

    private static List<CardRow> ofObject(Json.Obj byCode) {
        List<CardRow> rows = new ArrayList<>();
        for (Map.Entry<String, Json> field : byCode.fields().entrySet()) {
            int place = rows.size() + 1;
            if (field.getValue() instanceof Json.Obj entry) {
                rows.add(row(place, field.getKey(), entry));
            } else if (field.getValue() instanceof Json.Text hex) {
                rows.add(new CardRow(place, field.getKey(), "", hex.value()));
            }
        }
        return rows;
    }

    private static CardRow row(int place, String code, Json.Obj entry) {
        return new CardRow(place, code, text(entry, "name"), text(entry, "hex"));
    }

    /** A code may be written as a number. */
    private static String text(Json.Obj entry, String field) {
        return entry.text(field)
                .or(() -> entry.number(field).map(number -> number.toPlainString()))
                .orElse("");
    }
}
