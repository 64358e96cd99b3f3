package org.glintery.testkit;

import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Spot;
import org.glintery.api.time.About;

/**
 * Makes records whose every component, however deep, holds a value that is not its default: no null, zero, false, empty
 * text, empty list or first constant. Values of one's own take the place of what would not pass a record's checks.
 */
public final class FilledRecords {
    private static final Map<Class<?>, Object> PLAIN = Map.ofEntries(
            Map.entry(String.class, "Wörd \"3\" 🙂"),
            Map.entry(int.class, 3),
            Map.entry(Integer.class, 3),
            Map.entry(long.class, 4L),
            Map.entry(Long.class, 4L),
            Map.entry(double.class, 2.75),
            Map.entry(Double.class, 2.75),
            Map.entry(boolean.class, true),
            Map.entry(Boolean.class, true),
            Map.entry(UUID.class, new UUID(0x0123456789abcdefL, 0x8edcba9876543210L)),
            Map.entry(BigDecimal.class, new BigDecimal("12.50")),
            Map.entry(LocalDate.class, LocalDate.of(2024, 2, 29)),
            Map.entry(LocalTime.class, LocalTime.of(21, 7)),
            Map.entry(LocalDateTime.class, LocalDateTime.of(2024, 2, 29, 21, 7)),
            Map.entry(ZoneId.class, ZoneId.of("Europe/Oslo")),
            Map.entry(Instant.class, Instant.parse("2024-02-29T21:07:08.123456789Z")),
            Map.entry(Spot.class, new Spot.InPocket(new UUID(1, 2), new UUID(3, 4))),
            Map.entry(About.class, About.on(LocalDate.of(2023, 10, 4))),
            Map.entry(Amount.class, Amount.rough(41, 7)));

    private final Map<String, Object> own = new LinkedHashMap<>();

    public FilledRecords() {
        with("Settings.currency", "NZD");
        with("CardEntry.hex", Optional.of("#12ab34"));
        with("LegendLine.hex", Optional.of("#12ab34"));
    }

    /** The value of one component, named by its record's simple name and its own, such as {@code Kit.title}. */
    public FilledRecords with(String component, Object value) {
        own.put(component, value);
        return this;
    }

    /** @throws IllegalStateException when a record's checks refuse the values, or a type is not known here */
    public <T extends Record> T fill(Class<T> type) {
        RecordComponent[] components = type.getRecordComponents();
        Object[] values = new Object[components.length];
        for (int i = 0; i < components.length; i++) {
            String name = type.getSimpleName() + "." + components[i].getName();
            values[i] = own.containsKey(name) ? own.get(name) : value(components[i].getGenericType(), name);
        }
        try {
            Class<?>[] types =
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
            Constructor<T> constructor = type.getDeclaredConstructor(types);
            constructor.setAccessible(true);
            return constructor.newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("can't fill " + type.getSimpleName() + ": " + e.getCause(), e);
        }
    }

    private Object value(Type type, String name) {
        if (type instanceof ParameterizedType made) {
            Object first = value(made.getActualTypeArguments()[0], name);
            if (made.getRawType() == Optional.class) {
                return Optional.of(first);
            }
            if (made.getRawType() == Map.class) {
                return Map.of(first, value(made.getActualTypeArguments()[1], name));
            }
            return made.getRawType() == Set.class ? Set.of(first) : List.of(first);
        }
        return plain((Class<?>) type, name);
    }

    private Object plain(Class<?> type, String name) {
        if (PLAIN.containsKey(type)) {
            return PLAIN.get(type);
        }
        if (type.isEnum()) {
            Object[] constants = type.getEnumConstants();
            return constants[constants.length - 1];
        }
        if (type.isRecord()) {
            return fill(type.asSubclass(Record.class));
        }
        throw new IllegalStateException("no value known for " + name + " of type " + type.getName());
    }
}
