package org.glintery.records;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.glintery.api.Json;

/**
 * Keeps what a stored body holds beyond what its record knows: fields of the body itself and of records in
 * it. Inside lists and maps nothing is kept, because there is no telling which item became which.
 */
final class UnknownFields {
    private UnknownFields() {}

    static Json.Obj keep(Json.Obj old, Json.Obj now, Class<?> record) {
        Map<String, RecordComponent> known = Arrays.stream(record.getRecordComponents())
                .collect(Collectors.toMap(RecordComponent::getName, Function.identity()));
        var merged = new LinkedHashMap<>(now.fields());
        old.fields().forEach((name, before) -> {
            RecordComponent component = known.get(name);
            if (component == null) {
                merged.putIfAbsent(name, before);
            } else if (before instanceof Json.Obj oldPart && merged.get(name) instanceof Json.Obj newPart) {
                nested(component).ifPresent(type -> merged.put(name, keep(oldPart, newPart, type)));
            }
        });
        return new Json.Obj(merged);
    }

    private static Optional<Class<?>> nested(RecordComponent component) {
        if (component.getType().isRecord()) {
            return Optional.of(component.getType());
        }
        if (component.getType() == Optional.class
                && component.getGenericType() instanceof ParameterizedType optional
                && optional.getActualTypeArguments()[0] instanceof Class<?> inner
                && inner.isRecord()) {
            return Optional.of(inner);
        }
        return Optional.empty();
    }
}
