package org.glintery.exchange.tables;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.glintery.api.Json;

/** Puts a value together from its parts, in the order in which they come. Used once. */
final class ValueBuilding {
    private final Map<String, Object> fields = new LinkedHashMap<>();
    private Json whole;

    void put(List<String> path, Json value) {
        if (path.isEmpty()) {
            whole = value;
            return;
        }
        Map<String, Object> at = fields;
        for (String key : path.subList(0, path.size() - 1)) {
            at = inner(at, key);
        }
        at.put(path.get(path.size() - 1), value);
    }

    /** A record that was written whole gives way to what is spread over its columns. */
    @SuppressWarnings("unchecked")
    private static Map<String, Object> inner(Map<String, Object> at, String key) {
        Object there = at.get(key);
        if (there instanceof Map<?, ?>) {
            return (Map<String, Object>) there;
        }
        Map<String, Object> made = new LinkedHashMap<>();
        at.put(key, made);
        return made;
    }

    Json value() {
        return whole == null ? object(fields) : whole;
    }

    @SuppressWarnings("unchecked")
    private static Json object(Map<String, Object> fields) {
        Map<String, Json> made = new LinkedHashMap<>();
        fields.forEach((key, value) ->
                made.put(key, value instanceof Json json ? json : object((Map<String, Object>) value)));
        return new Json.Obj(made);
    }
}
