package org.glintery.testkit;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import org.glintery.api.Json;
import org.glintery.api.MalformedException;
import org.glintery.api.ledger.Spot;
import org.glintery.api.time.About;

/** Records out of JSON, by reflection. Knows its place, to say where something is wrong. */
final class PlainRecordReading {
    private static final Map<Class<?>, Function<String, Object>> TEXTS = Map.of(
            String.class, text -> text,
            UUID.class, UUID::fromString,
            LocalDate.class, LocalDate::parse,
            LocalTime.class, LocalTime::parse,
            LocalDateTime.class, LocalDateTime::parse,
            Instant.class, Instant::parse,
            ZoneId.class, ZoneId::of,
            Spot.class, Spot::parse,
            About.class, text -> About.edtf(text).orElseThrow(IllegalArgumentException::new));

    private static final Map<Class<?>, Function<BigDecimal, Object>> NUMBERS = Map.of(
            int.class, BigDecimal::intValueExact,
            Integer.class, BigDecimal::intValueExact,
            long.class, BigDecimal::longValueExact,
            Long.class, BigDecimal::longValueExact,
            double.class, BigDecimal::doubleValue,
            Double.class, BigDecimal::doubleValue,
            BigDecimal.class, number -> number);

    private final String place;

    private PlainRecordReading(String place) {
        this.place = place;
    }

    static <T> T read(Json json, Class<T> type) {
        Object value = new PlainRecordReading("").value(json, type);
        @SuppressWarnings("unchecked") // cast would fail for int.class and its kind
        T read = (T) value;
        return read;
    }

    private Object value(Json json, Type type) {
        if (type instanceof ParameterizedType made) {
            return many(json, made);
        }
        Class<?> wanted = (Class<?>) type;
        if (Json.class.isAssignableFrom(wanted) && wanted.isInstance(json)) {
            return json;
        }
        if (NUMBERS.containsKey(wanted)) {
            return converted(as(json, Json.Num.class).value(), NUMBERS.get(wanted));
        }
        if (wanted == boolean.class || wanted == Boolean.class) {
            return as(json, Json.Flag.class).value();
        }
        if (TEXTS.containsKey(wanted)) {
            return converted(as(json, Json.Text.class).value(), TEXTS.get(wanted));
        }
        if (wanted.isEnum()) {
            return constant(as(json, Json.Text.class).value(), wanted);
        }
        return record(as(json, Json.Obj.class), wanted);
    }

    private Object many(Json json, ParameterizedType type) {
        Type[] parts = type.getActualTypeArguments();
        Class<?> container = (Class<?>) type.getRawType();
        if (container == Optional.class) {
            return json instanceof Json.Null ? Optional.empty() : Optional.of(value(json, parts[0]));
        }
        if (container == Map.class) {
            Map<Object, Object> read = new LinkedHashMap<>();
            as(json, Json.Obj.class)
                    .fields()
                    .forEach((key, one) -> read.put(
                            value(new Json.Text(key), parts[0]), at("." + key).value(one, parts[1])));
            return read;
        }
        List<Json> items = as(json, Json.Arr.class).items();
        Object[] read = new Object[items.size()];
        for (int i = 0; i < read.length; i++) {
            read[i] = at("[" + i + "]").value(items.get(i), parts[0]);
        }
        return container == Set.class ? new LinkedHashSet<>(Arrays.asList(read)) : List.of(read);
    }

    private Object record(Json.Obj object, Class<?> wanted) {
        Class<?> type = PlainRecordWriting.family(wanted)
                .filter(base -> base == wanted)
                .<Class<?>>map(base -> member(object, base))
                .orElse(wanted);
        if (!type.isRecord()) {
            throw wrong("is not of the kind that belongs here", null);
        }
        RecordComponent[] components = type.getRecordComponents();
        Object[] values = new Object[components.length];
        for (int i = 0; i < components.length; i++) {
            values[i] = component(object, components[i]);
        }
        return made(type, components, values);
    }

    private Class<?> member(Json.Obj object, Class<?> base) {
        String kind = object.text(PlainRecordWriting.KIND).orElse("");
        return Arrays.stream(base.getPermittedSubclasses())
                .filter(one -> PlainRecordWriting.kind(one).equals(kind))
                .findFirst()
                .orElseThrow(() -> wrong("is not of the kind that belongs here", null));
    }

    private Object component(Json.Obj object, RecordComponent component) {
        PlainRecordReading there = at("." + component.getName());
        Json json = object.get(component.getName()).orElse(Json.NULL);
        if (json instanceof Json.Null) {
            if (component.getType() == Optional.class) {
                return Optional.empty();
            }
            throw there.wrong("is missing", null);
        }
        return there.value(json, component.getGenericType());
    }

    private Object made(Class<?> type, RecordComponent[] components, Object[] values) {
        try {
            Class<?>[] types =
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
            Constructor<?> constructor = type.getDeclaredConstructor(types);
            constructor.setAccessible(true);
            return constructor.newInstance(values);
        } catch (InvocationTargetException e) {
            throw wrong("is not right: " + e.getCause().getMessage(), e);
        } catch (ReflectiveOperationException e) {
            throw wrong("can't be made", e);
        }
    }

    private Object constant(String word, Class<?> type) {
        return Arrays.stream(type.getEnumConstants())
                .filter(one -> PlainRecordWriting.word((Enum<?>) one).equals(word))
                .findFirst()
                .orElseThrow(() -> wrong("can't be \"" + word + "\"", null));
    }

    private <S> Object converted(S value, Function<S, Object> conversion) {
        try {
            return conversion.apply(value);
        } catch (DateTimeException | IllegalArgumentException | ArithmeticException | MalformedException e) {
            throw wrong("can't be \"" + value + "\"", e);
        }
    }

    private <J extends Json> J as(Json json, Class<J> kind) {
        if (!kind.isInstance(json)) {
            throw wrong("is not of the kind that belongs here", null);
        }
        return kind.cast(json);
    }

    private PlainRecordReading at(String step) {
        return new PlainRecordReading(place + step);
    }

    private MalformedException wrong(String what, Throwable cause) {
        String where = place.isEmpty() ? "the value" : place.replaceFirst("^\\.", "");
        return new MalformedException(where + " " + what, cause);
    }
}
