package org.glintery.exchange.tables;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.glintery.api.Json;
import org.glintery.api.MalformedException;
import org.openide.util.NbBundle.Messages;

/** The items of lists or maps of one table, by the row that they belong to, until that row comes. */
@Messages({
    "# {0} - table",
    "# {1} - thing",
    "InnerRows.count={0}.csv does not hold as many rows for {1} as the list should have",
    "# {0} - table",
    "# {1} - thing",
    "InnerRows.orphan={0}.csv has rows for {1}, which has no such list",
    "# {0} - table",
    "# {1} - thing",
    "InnerRows.twice={0}.csv has two rows for one place of {1}"
})
final class InnerRows {
    private final String table;
    private final Map<String, SortedMap<Integer, Item>> items = new HashMap<>();

    private record Item(String key, Json value) {}

    InnerRows(String table) {
        this.table = table;
    }

    /** @param key of a map's entry; empty in a list */
    void add(String owner, int at, String key, Json value) {
        if (items.computeIfAbsent(owner, o -> new TreeMap<>()).put(at, new Item(key, value)) != null) {
            throw new MalformedException(Bundle.InnerRows_twice(table, owner));
        }
    }

    /** Gives the items of a row away. */
    Json take(String owner, int count, Kind kind) {
        SortedMap<Integer, Item> found = items.getOrDefault(owner, new TreeMap<>());
        items.remove(owner);
        if (found.size() != count) {
            throw new MalformedException(Bundle.InnerRows_count(table, owner));
        }
        List<Item> inOrder = List.copyOf(found.values());
        if (kind == Kind.LIST) {
            return new Json.Arr(inOrder.stream().map(Item::value).toList());
        }
        Map<String, Json> fields = new LinkedHashMap<>();
        inOrder.forEach(item -> fields.put(item.key(), item.value()));
        if (fields.size() != count) {
            throw new MalformedException(Bundle.InnerRows_twice(table, owner));
        }
        return new Json.Obj(fields);
    }

    /** Once all rows came. */
    void checkAllTaken() {
        items.keySet().stream().sorted().findFirst().ifPresent(owner -> {
            throw new MalformedException(Bundle.InnerRows_orphan(table, owner));
        });
    }
}
