package org.glintery.storage;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.ledger.Spot;
import org.glintery.api.storage.DrillPlaces;
import org.glintery.api.storage.Holder;
import org.glintery.api.storage.KitUp;
import org.glintery.api.storage.Pocket;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Precondition;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;

/** Adds, changes and removes holders; no drill loses its pocket. Any thread. */
final class HolderCare {

    private static final int MOST_POCKETS = 1_000;

    private final View view;

    HolderCare(View view) {
        this.view = view;
    }

    Result<ChangeSet> add(UUID id, Holder holder) {
        Optional<Refusal> refusal = refusal(id, holder);
        if (refusal.isPresent()) {
            return Result.refused(refusal.get());
        }
        return Result.ok(ChangeSet.named("Add the holder " + holder.name())
                .create(Holder.TYPE, id, holder)
                .build());
    }

    Result<ChangeSet> edit(UUID id, Holder holder) {
        Optional<Stored<Holder>> old = view.find(Holder.TYPE, id);
        if (old.isEmpty()) {
            return gone();
        }
        Optional<Refusal> refusal =
                refusal(id, holder).or(() -> pocketInUse(id, old.get().value(), holder));
        if (refusal.isPresent()) {
            return Result.refused(refusal.get());
        }
        return Result.ok(ChangeSet.named("Change the holder " + holder.name())
                .replace(Holder.TYPE, old.get(), holder)
                .build());
    }

    Result<ChangeSet> remove(UUID id) {
        Optional<Stored<Holder>> old = view.find(Holder.TYPE, id);
        if (old.isEmpty()) {
            return gone();
        }
        Holder holder = old.get().value();
        if (!isFree(old.get(), held())) {
            return Result.refused(
                    "in-use",
                    "Drills or a piece are still in " + holder.name() + ". Clear it first. Nothing was changed.");
        }
        return Result.ok(ChangeSet.named("Remove the holder " + holder.name())
                .require(new Precondition.DocumentAt(
                        Holder.TYPE.ref(id), old.get().version()))
                .remove(Holder.TYPE.ref(id))
                .build());
    }

    List<Stored<Holder>> free() {
        Set<UUID> held = held();
        return view.all(Holder.TYPE).stream()
                .filter(holder -> holder.value().lentTo().isEmpty() && isFree(holder, held))
                .toList();
    }

    private boolean isFree(Stored<Holder> holder, Set<UUID> held) {
        return !held.contains(holder.id())
                && holder.value().pockets().stream().allMatch(pocket -> isEmpty(holder.id(), pocket));
    }

    private Set<UUID> held() {
        return view.all(KitUp.TYPE).stream().map(k -> k.value().holder()).collect(Collectors.toSet());
    }

    private boolean isEmpty(UUID holder, Pocket pocket) {
        return DrillPlaces.isEmpty(view, new Spot.InPocket(holder, pocket.id()));
    }

    private Optional<Refusal> refusal(UUID id, Holder holder) {
        if (holder.name().isBlank()) {
            return refused("no-name", "A holder needs a name. Nothing was changed.");
        }
        if (view.all(Holder.TYPE).stream()
                .anyMatch(h -> !h.id().equals(id) && same(h.value().name(), holder.name()))) {
            return refused(
                    "name-taken", "Another holder is called " + holder.name() + " already. Nothing was changed.");
        }
        int pockets = holder.pockets().size();
        if (pockets == 0 || pockets > MOST_POCKETS || holder.rows() < 1 || holder.columns() < 1) {
            return refused("no-pockets", "A holder has from 1 to " + MOST_POCKETS + " pockets. Nothing was changed.");
        }
        Set<String> names = new HashSet<>();
        Set<UUID> ids = new HashSet<>();
        for (Pocket pocket : holder.pockets()) {
            if (!names.add(pocket.name().strip().toLowerCase(Locale.ROOT)) || !ids.add(pocket.id())) {
                return refused(
                        "pocket-twice",
                        "Two pockets of " + holder.name() + " are called " + pocket.name() + ". Nothing was changed.");
            }
            if (pocket.capacity().filter(capacity -> capacity < 1).isPresent()) {
                return refused(
                        "out-of-range",
                        "Pocket " + pocket.name() + " must take at least 1 drill. Nothing was changed.");
            }
        }
        return Optional.empty();
    }

    private Optional<Refusal> pocketInUse(UUID id, Holder old, Holder now) {
        Set<UUID> kept = now.pockets().stream().map(Pocket::id).collect(Collectors.toSet());
        Optional<Pocket> seated = old.pockets().stream()
                .filter(pocket -> !kept.contains(pocket.id()))
                .filter(pocket -> DrillPlaces.pocketsSeated(view).containsKey(new Spot.InPocket(id, pocket.id())))
                .findFirst();
        if (seated.isPresent()) {
            return refused(
                    "in-use",
                    "A piece is kitted up in " + seated.get().name() + ". Kit it down first. Nothing was changed.");
        }
        return old.pockets().stream()
                .filter(pocket -> !kept.contains(pocket.id()) && !isEmpty(id, pocket))
                .findFirst()
                .map(pocket -> new Refusal(
                        "in-use", "Drills are still in " + pocket.name() + ". Empty it first. Nothing was changed."));
    }

    private static boolean same(String name, String other) {
        return name.strip().equalsIgnoreCase(other.strip());
    }

    private static Optional<Refusal> refused(String code, String text) {
        return Optional.of(new Refusal(code, text));
    }

    private static Result<ChangeSet> gone() {
        return Result.refused("no-holder", "That holder is no longer in the workshop. Nothing was changed.");
    }
}
