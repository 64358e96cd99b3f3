package org.glintery.testkit;

import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.YearMonth;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.glintery.api.Json;
import org.glintery.api.charts.CellBand;
import org.glintery.api.charts.Crop;
import org.glintery.api.charts.DesignPicture;
import org.glintery.api.charts.LaidBand;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.time.About;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.Operation;
import org.glintery.api.workshop.Picture;
import org.glintery.api.workshop.Precondition;
import org.glintery.api.workshop.Settings;

/**
 * Makes records in which every component, however deep, holds a value of its own that is not its default: no empty optional
 * or collection, no zero, no empty text, no first constant, and no number, text, id or time twice, so that components that
 * were swapped are noticed. What it can't fill fails the test, so that a new component can't be forgotten. Not safe for use
 * by several threads.
 */
public final class FilledRecords {
    private final Map<String, Object> given = new LinkedHashMap<>();
    private UnaryOperator<String> writing = UnaryOperator.identity();
    private int count;

    public FilledRecords() {
        with(Settings.class, "currency", "NZD");
        with(DesignPicture.class, "crop", new Crop(0.25, 0.125, 0.5, 0.375));
        with(CellBand.class, "rows", List.of("3*12 - 0 7*2", "5"));
        with(LaidBand.class, "rows", List.of("4 10-32", "7"));
    }

    /** Components that must hold something particular, by record and name. */
    public FilledRecords with(Class<?> type, String component, Object value) {
        given.put(type.getSimpleName() + "." + component, value);
        return this;
    }

    /** What is done to each text before it is put in. */
    public FilledRecords writing(UnaryOperator<String> how) {
        writing = how;
        return this;
    }

    public <T extends Record> T of(Class<T> type) {
        try {
            RecordComponent[] components = type.getRecordComponents();
            Class<?>[] types = new Class<?>[components.length];
            Object[] values = new Object[components.length];
            for (int i = 0; i < components.length; i++) {
                types[i] = components[i].getType();
                String name = type.getSimpleName() + "." + components[i].getName();
                values[i] = given.containsKey(name) ? given.get(name) : value(components[i].getGenericType(), name);
                if (isDefault(values[i])) {
                    throw new AssertionError(name + " could not be filled");
                }
            }
            Constructor<T> constructor = type.getDeclaredConstructor(types);
            constructor.setAccessible(true);
            return constructor.newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(type + " could not be made", e);
        }
    }

    private static boolean isDefault(Object value) {
        return value == null
                || value.equals("")
                || value.equals(false)
                || value instanceof Number number && number.doubleValue() == 0
                || value instanceof Optional<?> optional && optional.isEmpty()
                || value instanceof java.util.Collection<?> collection && collection.isEmpty()
                || value instanceof Map<?, ?> map && map.isEmpty()
                || value instanceof Enum<?> constant && constant.ordinal() == 0;
    }

    private Object value(Type type, String name) {
        if (type instanceof ParameterizedType parameterized) {
            Type first = parameterized.getActualTypeArguments()[0];
            Class<?> raw = (Class<?>) parameterized.getRawType();
            if (raw == Optional.class) {
                return Optional.of(value(first, name));
            }
            if (raw == List.class) {
                return List.of(value(first, name), value(first, name));
            }
            if (raw == Set.class) {
                return Set.of(value(first, name));
            }
            if (raw == Map.class) {
                Map<Object, Object> map = new LinkedHashMap<>();
                map.put(writing.apply("=1+1 " + ++count), value(parameterized.getActualTypeArguments()[1], name));
                map.put(writing.apply("plain" + ++count), value(parameterized.getActualTypeArguments()[1], name));
                return map;
            }
        }
        // of a type that its user chooses, as in Result.Ok<T>
        return single(type instanceof Class<?> plain ? plain : String.class, name);
    }

    private Object single(Class<?> type, String name) {
        count++;
        if (type == String.class) {
            return writing.apply(count % 3 == 0 ? "=SUM(A1)\r\n\"" + count + "\", ;é ✓" : "-text " + count);
        }
        if (type == int.class || type == Integer.class) {
            return 100 + count;
        }
        if (type == long.class || type == Long.class) {
            return 1_000L + count;
        }
        if (type == double.class || type == Double.class) {
            return 0.25 + count;
        }
        if (type == boolean.class || type == Boolean.class) {
            return true;
        }
        if (type == BigDecimal.class) {
            return new BigDecimal(count + ".50");
        }
        if (type == UUID.class) {
            return new UUID(77, count);
        }
        if (type == About.class) {
            return About.edtf(YearMonth.of(1990, 1).plusMonths(count) + "~").orElseThrow();
        }
        if (type == Path.class) {
            return Path.of("folder", "file-" + count);
        }
        if (type == LocalDate.class) {
            return LocalDate.of(2093, 5, 1).plusDays(count);
        }
        if (type == LocalTime.class) {
            return LocalTime.of(count % 24, 7);
        }
        if (type == ZoneId.class) {
            return ZoneOffset.ofTotalSeconds(60 * count);
        }
        if (type == LocalDateTime.class) {
            return LocalDateTime.of(2023, 5, 1, 14, 30, 15).plusHours(count);
        }
        if (type == Instant.class) {
            return Instant.ofEpochSecond(1_700_000_000L + count, 123_456_000);
        }
        if (type == Amount.class) {
            return Amount.rough(500 + count, 20 + count);
        }
        if (type == Spot.class) {
            return new Spot.InPocket(new UUID(78, count), new UUID(79, count));
        }
        if (type == byte[].class) {
            return new byte[] {(byte) count};
        }
        if (type == Blob.class) {
            return Blob.of("image/png", new byte[] {1, (byte) count});
        }
        if (type == Json.class) {
            return Json.Num.of(count);
        }
        if (type == Precondition.class) {
            return of(Precondition.DocumentAt.class);
        }
        if (type == Operation.class) {
            return of(Operation.Remove.class);
        }
        if (type == Picture.class) {
            return given.getOrDefault("Picture", new Picture("0".repeat(64), "image/png", "caption " + count));
        }
        if (type.isEnum()) {
            return type.getEnumConstants()[type.getEnumConstants().length - 1];
        }
        if (type == Drill.class) {
            return of(Drill.class);
        }
        if (type.isRecord()) {
            return of(type.asSubclass(Record.class));
        }
        throw new AssertionError(name + " is of a kind that can't be filled: " + type);
    }
}
