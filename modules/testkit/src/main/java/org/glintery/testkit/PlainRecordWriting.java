package org.glintery.testkit;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.glintery.api.Json;
import org.glintery.api.MalformedException;
import org.glintery.api.ledger.Spot;
import org.glintery.api.time.About;

/** Records and what they are made of as JSON, by reflection. */
final class PlainRecordWriting {
    /** What tells the records of a sealed interface apart. */
    static final String KIND = "kind";

    private PlainRecordWriting() {}

    static Json json(Object value) {
        if (value instanceof Json json) {
            return json;
        }
        if (value == null) {
            return Json.NULL;
        }
        if (value instanceof Optional<?> optional) {
            return json(optional.orElse(null));
        }
        if (value instanceof Collection<?> many) {
            return new Json.Arr(many.stream().map(PlainRecordWriting::json).toList());
        }
        if (value instanceof Map<?, ?> map) {
            Map<String, Json> fields = new LinkedHashMap<>();
            map.forEach((key, one) -> fields.put(text(key), json(one)));
            return new Json.Obj(fields);
        }
        if (value instanceof Boolean flag) {
            return new Json.Flag(flag);
        }
        if (value instanceof Number number) {
            return new Json.Num(decimal(number));
        }
        return value instanceof Record record && !(value instanceof Spot) ? object(record) : new Json.Text(text(value));
    }

    private static BigDecimal decimal(Number number) {
        if (number instanceof Double real) {
            if (!Double.isFinite(real)) {
                throw new MalformedException("a number is not finite");
            }
            return BigDecimal.valueOf(real);
        }
        return number instanceof BigDecimal exact ? exact : BigDecimal.valueOf(number.longValue());
    }

    private static String text(Object value) {
        if (value instanceof Enum<?> constant) {
            return word(constant);
        }
        if (value instanceof LocalTime time) {
            return DateTimeFormatter.ISO_LOCAL_TIME.format(time);
        }
        if (value instanceof LocalDateTime time) {
            return DateTimeFormatter.ISO_LOCAL_DATE_TIME.format(time);
        }
        boolean known = Stream.of(
                        String.class, UUID.class, Spot.class, About.class, TemporalAccessor.class, ZoneId.class)
                .anyMatch(type -> type.isInstance(value));
        if (!known) {
            throw new MalformedException(
                    "this can't be written as JSON: " + value.getClass().getSimpleName());
        }
        return value.toString();
    }

    /** An enum constant: lower case with hyphens. */
    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static Json object(Record record) {
        Map<String, Json> fields = new LinkedHashMap<>();
        family(record.getClass()).ifPresent(base -> fields.put(KIND, new Json.Text(kind(record.getClass()))));
        for (RecordComponent component : record.getClass().getRecordComponents()) {
            Object value = value(record, component);
            if (value != null && !value.equals(Optional.empty())) {
                fields.put(component.getName(), json(value));
            }
        }
        return new Json.Obj(fields);
    }

    private static Object value(Record record, RecordComponent component) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(record);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new MalformedException(
                    "this can't be written as JSON: " + record.getClass().getSimpleName(), e);
        }
    }

    /** The sealed interface of records that a type is or belongs to. */
    static Optional<Class<?>> family(Class<?> type) {
        return Stream.concat(Stream.of(type), Arrays.stream(type.getInterfaces()))
                .filter(base -> base.isInterface() && base.isSealed() && base != Spot.class)
                .filter(base -> Arrays.stream(base.getPermittedSubclasses()).allMatch(Class::isRecord))
                .<Class<?>>map(base -> base)
                .findFirst();
    }

    static String kind(Class<?> type) {
        return type.getSimpleName().replaceAll("(?<=[a-z0-9])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
    }
}
