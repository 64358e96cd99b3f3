package org.glintery.commands;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The arguments of a call, read. */
record Arguments(Map<String, List<String>> values, Set<String> flags) {

    Arguments {
        values = Map.copyOf(values);
        flags = Set.copyOf(flags);
    }

    /** Of several, the last one said. */
    Optional<String> value(String name) {
        List<String> all = values(name);
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1));
    }

    List<String> values(String name) {
        return values.getOrDefault(name, List.of());
    }

    boolean flag(String name) {
        return flags.contains(name);
    }
}
