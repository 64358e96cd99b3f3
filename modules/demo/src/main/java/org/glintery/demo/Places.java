package org.glintery.demo;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.storage.KeepingPlace;
import org.glintery.api.workshop.ChangeSet;

/** Where kits, canvases and finishes are kept. */
final class Places {
    private static final List<String> NAMES = List.of(
            "Tall shelf, upper board", "Tall shelf, lower board", "Chest of rolled canvases", "Wall by the stairs");

    private final List<UUID> ids;

    Places(Seeded seeded, ChangeSet.Builder change) {
        ids = NAMES.stream().map(name -> seeded.id()).toList();
        for (int i = 0; i < ids.size(); i++) {
            change.create(KeepingPlace.TYPE, ids.get(i), new KeepingPlace(NAMES.get(i), Optional.empty(), ""));
        }
    }

    UUID someShelf(Seeded seeded) {
        return ids.get(seeded.between(0, NAMES.size() - 2));
    }

    UUID wall() {
        return ids.get(NAMES.size() - 1);
    }
}
