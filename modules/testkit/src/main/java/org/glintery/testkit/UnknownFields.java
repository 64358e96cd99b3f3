package org.glintery.testkit;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.Map;
import org.glintery.api.Json;

/** Keeps what a body that stands holds beyond its record, in the body itself and in records inside it. */
final class UnknownFields {
    private UnknownFields() {}

    static Json.Obj keep(Json.Obj old, Json.Obj now, Class<?> record) {
        Map<String, Class<?>> known = new LinkedHashMap<>();
        for (RecordComponent component : record.getRecordComponents()) {
            known.put(component.getName(), inner(component));
        }
        Json.Obj merged = now;
        for (var field : old.fields().entrySet()) {
            String name = field.getKey();
            Json mine = now.fields().get(name);
            if (!known.containsKey(name) && mine == null) {
                merged = merged.with(name, field.getValue());
            } else if (field.getValue() instanceof Json.Obj before
                    && mine instanceof Json.Obj after
                    && known.get(name) != null
                    && known.get(name).isRecord()) {
                merged = merged.with(name, keep(before, after, known.get(name)));
            }
        }
        return merged;
    }

    /** The type of a component, or of what is in its optional; null when that has parts itself. */
    private static Class<?> inner(RecordComponent component) {
        if (component.getGenericType() instanceof ParameterizedType made) {
            return made.getActualTypeArguments()[0] instanceof Class<?> part ? part : null;
        }
        return component.getType();
    }
}
