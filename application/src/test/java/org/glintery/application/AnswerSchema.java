package org.glintery.application;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.UUID;
import org.glintery.api.Json;
import org.glintery.api.ledger.Spot;
import org.glintery.api.time.About;
import org.glintery.api.verb.Verb;

/** The JSON Schema (2020-12) of what a verb answers under {@code --json}, made from its record. */
final class AnswerSchema {

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private static final Map<Class<?>, String> TEXTS = Map.ofEntries(
            Map.entry(String.class, ""),
            Map.entry(Spot.class, ""),
            Map.entry(About.class, ""),
            Map.entry(Path.class, ""),
            Map.entry(ZoneId.class, ""),
            Map.entry(LocalDateTime.class, ""),
            Map.entry(LocalTime.class, ""),
            Map.entry(UUID.class, "uuid"),
            Map.entry(Instant.class, "date-time"),
            Map.entry(LocalDate.class, "date"),
            Map.entry(Duration.class, "duration"));

    private static final Map<Class<?>, String> PLAIN = Map.ofEntries(
            Map.entry(boolean.class, "boolean"),
            Map.entry(Boolean.class, "boolean"),
            Map.entry(int.class, "integer"),
            Map.entry(Integer.class, "integer"),
            Map.entry(long.class, "integer"),
            Map.entry(Long.class, "integer"),
            Map.entry(BigInteger.class, "integer"),
            Map.entry(OptionalInt.class, "integer"),
            Map.entry(OptionalLong.class, "integer"),
            Map.entry(double.class, "number"),
            Map.entry(Double.class, "number"),
            Map.entry(BigDecimal.class, "number"),
            Map.entry(OptionalDouble.class, "number"));

    private final ObjectNode shared = NODES.objectNode();
    private final Map<String, Class<?>> sharedTypes = new HashMap<>();

    private AnswerSchema() {}

    static ObjectNode of(Verb verb) {
        AnswerSchema schemas = new AnswerSchema();
        ObjectNode schema = NODES.objectNode()
                .put("$schema", "https://json-schema.org/draft/2020-12/schema")
                .put("$id", "urn:glintery:answer:" + fileName(verb))
                .put("title", verb.name())
                .put("description", verb.summary());
        schema.setAll(schemas.ofRecord(verb.answers()));
        if (!schemas.shared.isEmpty()) {
            schema.set("$defs", schemas.shared);
        }
        return schema;
    }

    /** Without its ending. */
    static String fileName(Verb verb) {
        return verb.name().replace(' ', '-');
    }

    private ObjectNode of(Type type) {
        if (type instanceof ParameterizedType generic) {
            return ofGeneric((Class<?>) generic.getRawType(), generic.getActualTypeArguments());
        }
        Class<?> plain = (Class<?>) type;
        if (TEXTS.containsKey(plain)) {
            ObjectNode text = NODES.objectNode().put("type", "string");
            return TEXTS.get(plain).isEmpty() ? text : text.put("format", TEXTS.get(plain));
        }
        if (PLAIN.containsKey(plain)) {
            return NODES.objectNode().put("type", PLAIN.get(plain));
        }
        if (Json.class.isAssignableFrom(plain)) {
            return NODES.objectNode();
        }
        if (plain == byte[].class) {
            return NODES.objectNode().put("type", "string").put("contentEncoding", "base64");
        }
        if (plain.isEnum()) {
            ObjectNode words = NODES.objectNode();
            Arrays.stream(plain.getEnumConstants())
                    .forEach(word -> words.withArray("enum").add(word((Enum<?>) word)));
            return words;
        }
        return named(plain);
    }

    private ObjectNode ofGeneric(Class<?> raw, Type[] arguments) {
        if (raw == Optional.class) {
            return of(arguments[0]);
        }
        if (Collection.class.isAssignableFrom(raw)) {
            ObjectNode list = NODES.objectNode().put("type", "array");
            list.set("items", of(arguments[0]));
            return list;
        }
        if (Map.class.isAssignableFrom(raw)) {
            ObjectNode map = NODES.objectNode().put("type", "object");
            map.set("additionalProperties", of(arguments[1]));
            return map;
        }
        throw new IllegalArgumentException("an answer can't hold a " + raw);
    }

    /** Records and sealed families of records stand once, under their names, so that they may hold each other. */
    private ObjectNode named(Class<?> type) {
        String name = type.getSimpleName();
        sharedTypes.putIfAbsent(name, type);
        if (sharedTypes.get(name) != type) {
            throw new IllegalArgumentException("two records of one answer are called " + name);
        }
        if (!shared.has(name)) {
            shared.set(name, NODES.objectNode());
            shared.set(name, type.isSealed() ? ofFamily(type) : ofRecord(type));
        }
        return NODES.objectNode().put("$ref", "#/$defs/" + name);
    }

    private ObjectNode ofFamily(Class<?> family) {
        ObjectNode any = NODES.objectNode();
        for (Class<?> member : family.getPermittedSubclasses()) {
            ObjectNode one = ofRecord(member);
            String kind = member.getSimpleName()
                    .replaceAll("(?<=[a-z0-9])(?=[A-Z])", "-")
                    .toLowerCase(Locale.ROOT);
            one.withObject("/properties").putObject("kind").put("const", kind);
            one.withArray("required").add("kind");
            any.withArray("oneOf").add(one);
        }
        return any;
    }

    private ObjectNode ofRecord(Class<?> type) {
        if (!type.isRecord()) {
            throw new IllegalArgumentException("an answer can't hold a " + type);
        }
        ObjectNode object = NODES.objectNode().put("type", "object");
        ObjectNode properties = object.putObject("properties");
        for (RecordComponent component : type.getRecordComponents()) {
            properties.set(component.getName(), of(component.getGenericType()));
            if (!component.getType().getName().startsWith("java.util.Optional")) {
                object.withArray("required").add(component.getName());
            }
        }
        return object.put("additionalProperties", false);
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
