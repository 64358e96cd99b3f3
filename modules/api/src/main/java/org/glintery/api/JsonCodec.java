package org.glintery.api;

/**
 * JSON as text and as records. One implementation, found by {@code Lookup}; any thread.
 *
 * <p>A record maps to an object with its component names. Absent optionals are left out; enum constants
 * are their names in lower case with hyphens; {@code Spot} and {@code About} are their text; dates and
 * instants are ISO 8601; money and numbers are plain decimals. Unknown fields are ignored when reading.
 */
@Stable
public interface JsonCodec {

    /** @throws MalformedException when the text is not one JSON value, nests deeper than 200 or is over 64 MiB */
    Json parse(String text);

    /** One line, keys in their order. */
    String compact(Json json);

    /** Indented by two spaces, for people. */
    String pretty(Json json);

    /** A record, list, map, enum, string or number as JSON. */
    Json toJson(Object value);

    /** @throws MalformedException when a component is missing or of another kind; the message names its path */
    <T> T fromJson(Json json, Class<T> type);
}
