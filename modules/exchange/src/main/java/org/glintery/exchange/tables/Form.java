package org.glintery.exchange.tables;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.glintery.api.Json;

/**
 * What the values at one place look like over all documents of a kind. An object counts as a map, whose keys are content,
 * when a key is no word or there are too many; else it is a record, whose keys become columns. Learn everything first, then
 * ask. Not safe for use by several threads.
 */
final class Form {
    private static final Pattern WORD = Pattern.compile("[a-z][A-Za-z0-9]*");
    private static final int MOST_FIELDS = 64;

    private final boolean wholeDocument;
    private final Map<String, Form> fields = new LinkedHashMap<>();
    private final KeyOrder order = new KeyOrder();
    private Form items;
    private Form values;
    private Kind single;
    private boolean sawSingle;
    private boolean sawList;
    private boolean sawEmpty;

    private Form(boolean wholeDocument) {
        this.wholeDocument = wholeDocument;
    }

    /** A document is always a record. */
    static Form ofDocuments() {
        return new Form(true);
    }

    void learn(Json value) {
        if (value instanceof Json.Arr array) {
            sawList = true;
            array.items().forEach(item -> items().learn(item));
        } else if (value instanceof Json.Obj object) {
            learn(object);
        } else {
            sawSingle = true;
            single = single == null ? Kind.ofSingle(value).orElse(null) : single;
        }
    }

    private void learn(Json.Obj object) {
        sawEmpty |= object.fields().isEmpty();
        if (values == null && !wholeDocument && isMap(object)) {
            values = new Form(false);
            fields.values().forEach(values::learnAll);
            fields.clear();
        }
        if (values != null) {
            object.fields().values().forEach(values::learn);
            return;
        }
        order.learn(object.fields().keySet());
        object.fields().forEach((key, value) -> field(key).learn(value));
    }

    private boolean isMap(Json.Obj object) {
        return !object.fields().keySet().stream()
                        .allMatch(key -> WORD.matcher(key).matches())
                || object.fields().keySet().stream()
                                        .filter(key -> !fields.containsKey(key))
                                        .count()
                                + fields.size()
                        > MOST_FIELDS;
    }

    /** Learns what another place has learnt. */
    private void learnAll(Form other) {
        sawSingle |= other.sawSingle;
        sawList |= other.sawList;
        sawEmpty |= other.sawEmpty;
        single = single == null ? other.single : single;
        if (other.items != null) {
            items().learnAll(other.items);
        }
        if (other.values != null || values != null) {
            values = values == null ? new Form(false) : values;
            fields.values().forEach(values::learnAll);
            fields.clear();
            other.fields.values().forEach(values::learnAll);
            if (other.values != null) {
                values.learnAll(other.values);
            }
            return;
        }
        order.learnAll(other.order);
        other.fields.forEach((key, form) -> field(key).learnAll(form));
    }

    private Form items() {
        items = items == null ? new Form(false) : items;
        return items;
    }

    private Form field(String key) {
        return fields.computeIfAbsent(key, k -> new Form(false));
    }

    Kind kind() {
        if (sawList) {
            return Kind.LIST;
        }
        if (values != null || fields.isEmpty() && sawEmpty && !wholeDocument) {
            return Kind.MAP;
        }
        return fields.isEmpty() && !wholeDocument ? Optional.ofNullable(single).orElse(Kind.TEXT) : Kind.RECORD;
    }

    /** Of a list's items or a map's values; empty when there never was one. */
    Optional<Form> inner() {
        return Optional.ofNullable(kind() == Kind.LIST ? items : values);
    }

    /** Of a record, in the order of its columns. */
    List<String> keys() {
        return order.sorted();
    }

    Form at(String key) {
        return fields.get(key);
    }

    /** Whether some value here can't be spread over the columns of a record. */
    boolean hasOdd() {
        return sawEmpty || sawSingle || order.isContradictory();
    }

    /** Whether this value can be spread over the columns of a record. */
    boolean spreads(Json value) {
        return value instanceof Json.Obj object
                && !object.fields().isEmpty()
                && order.agreesWith(object.fields().keySet());
    }
}
