package org.glintery.activework;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.glintery.api.activework.Sitting;
import org.glintery.api.workshop.Derived;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;

/** The sittings of each piece, oldest first. Any thread. */
final class PieceSittings {
    private static final Derived<Map<UUID, List<Stored<Sitting>>>> BY_PIECE = PieceSittings::byPiece;

    private static final Comparator<Stored<Sitting>> OLDEST_FIRST = Comparator.comparing(
                    (Stored<Sitting> sitting) -> sitting.value().day())
            .thenComparing(
                    sitting -> sitting.value().startedAt().orElse(null),
                    Comparator.nullsFirst(Comparator.naturalOrder()));

    private PieceSittings() {}

    static List<Stored<Sitting>> of(View view, UUID piece) {
        return view.derived(BY_PIECE).getOrDefault(piece, List.of());
    }

    private static Map<UUID, List<Stored<Sitting>>> byPiece(View view) {
        Map<UUID, List<Stored<Sitting>>> byPiece = new HashMap<>();
        for (Stored<Sitting> sitting : view.all(Sitting.TYPE)) {
            byPiece.computeIfAbsent(sitting.value().piece(), piece -> new ArrayList<>())
                    .add(sitting);
        }
        byPiece.replaceAll(
                (piece, sittings) -> sittings.stream().sorted(OLDEST_FIRST).toList());
        return byPiece;
    }
}
