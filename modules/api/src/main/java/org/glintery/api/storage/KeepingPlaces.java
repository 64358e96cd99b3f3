package org.glintery.api.storage;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.PlainText;
import org.glintery.api.Preview;
import org.glintery.api.workshop.Operation;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;

/** Keeping places by what people call them. Pure; any thread. */
@Preview(since = "1.0")
public final class KeepingPlaces {
    private KeepingPlaces() {}

    /** @param making makes the place where there was none of that name; to go into the change that uses it */
    public record Named(UUID id, List<Operation> making) {
        public Named {
            making = List.copyOf(making);
        }
    }

    /** The place of a name, whatever its case; empty for a blank one. */
    public static Optional<Named> named(View view, String written) {
        String name = PlainText.line(written).strip();
        if (name.isEmpty()) {
            return Optional.empty();
        }
        Optional<UUID> known = view.all(KeepingPlace.TYPE).stream()
                .filter(place -> key(place.value().name()).equals(key(name)))
                .findFirst()
                .map(Stored::id);
        return Optional.of(known.map(id -> new Named(id, List.of())).orElseGet(() -> made(name)));
    }

    private static Named made(String name) {
        UUID id = UUID.randomUUID();
        KeepingPlace place = new KeepingPlace(name, Optional.empty(), "");
        return new Named(id, List.of(new Operation.Put<>(KeepingPlace.TYPE, id, place)));
    }

    /** What a place is called; empty when there is none. */
    public static String name(View view, Optional<UUID> place) {
        return place.flatMap(id -> view.find(KeepingPlace.TYPE, id))
                .map(stored -> stored.value().name())
                .orElse("");
    }

    /** All names, in the order of the alphabet. */
    public static List<String> names(View view) {
        return view.all(KeepingPlace.TYPE).stream()
                .map(place -> place.value().name())
                .sorted(String.CASE_INSENSITIVE_ORDER)
                .toList();
    }

    private static String key(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }
}
