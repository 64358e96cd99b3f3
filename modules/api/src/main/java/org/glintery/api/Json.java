package org.glintery.api;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A JSON value, immutable. Small on purpose: upcasters and importers need no library. */
@Stable
public sealed interface Json {

    /** An object; keys keep their order. */
    record Obj(Map<String, Json> fields) implements Json {
        public Obj {
            fields = Collections.unmodifiableMap(new LinkedHashMap<>(fields));
        }

        public Optional<Json> get(String name) {
            return Optional.ofNullable(fields.get(name));
        }

        public Optional<String> text(String name) {
            return get(name).filter(Text.class::isInstance).map(j -> ((Text) j).value());
        }

        public Optional<BigDecimal> number(String name) {
            return get(name).filter(Num.class::isInstance).map(j -> ((Num) j).value());
        }

        /** This object with one field set or replaced. */
        public Obj with(String name, Json value) {
            var copy = new LinkedHashMap<>(fields);
            copy.put(name, value);
            return new Obj(copy);
        }

        /** This object without one field. */
        public Obj without(String name) {
            var copy = new LinkedHashMap<>(fields);
            copy.remove(name);
            return new Obj(copy);
        }
    }

    record Arr(List<Json> items) implements Json {
        public Arr {
            items = List.copyOf(items);
        }
    }

    record Text(String value) implements Json {}

    record Num(BigDecimal value) implements Json {
        public static Num of(long value) {
            return new Num(BigDecimal.valueOf(value));
        }
    }

    record Flag(boolean value) implements Json {}

    record Null() implements Json {}

    Json NULL = new Null();
    Obj EMPTY = new Obj(Map.of());
}
