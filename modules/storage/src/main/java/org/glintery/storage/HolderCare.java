package org.glintery.storage;

import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Spot;
import org.glintery.api.storage.DrillPlaces;
import org.glintery.api.storage.Holder;
import org.glintery.api.storage.Pocket;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Precondition;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/** Adds, changes and removes holders; no drill loses its pocket. Any thread. */
final class HolderCare {

    private static final int MOST_POCKETS = 1_000;

    private final View view;

    HolderCare(View view) {
        this.view = view;
    }

    @Messages({"# {0} - holder", "HolderCare.add=Add the holder {0}"})
    Result<ChangeSet> add(UUID id, Holder holder) {
        Optional<Refusal> refusal = refusal(id, holder);
        if (refusal.isPresent()) {
            return Result.refused(refusal.get());
        }
        return Result.ok(ChangeSet.named(Bundle.HolderCare_add(holder.name()))
                .create(Holder.TYPE, id, holder)
                .build());
    }

    @Messages({"# {0} - holder", "HolderCare.edit=Change the holder {0}"})
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
        return Result.ok(ChangeSet.named(Bundle.HolderCare_edit(holder.name()))
                .replace(Holder.TYPE, old.get(), holder)
                .build());
    }

    @Messages({
        "# {0} - holder",
        "HolderCare.remove=Remove the holder {0}",
        "# {0} - holder",
        "HolderCare.inUse=Drills or a piece are still in {0}. Clear it first. Nothing was changed."
    })
    Result<ChangeSet> remove(UUID id) {
        Optional<Stored<Holder>> old = view.find(Holder.TYPE, id);
        if (old.isEmpty()) {
            return gone();
        }
        Holder holder = old.get().value();
        if (!new FreeHolders(view).isEmpty(old.get())) {
            return Result.refused("in-use", Bundle.HolderCare_inUse(holder.name()));
        }
        return Result.ok(ChangeSet.named(Bundle.HolderCare_remove(holder.name()))
                .require(new Precondition.DocumentAt(
                        Holder.TYPE.ref(id), old.get().version()))
                .remove(Holder.TYPE.ref(id))
                .build());
    }

    private boolean isEmpty(UUID holder, Pocket pocket) {
        return DrillPlaces.isEmpty(view, new Spot.InPocket(holder, pocket.id()));
    }

    @Messages({
        "HolderCare.noName=A holder needs a name. Nothing was changed.",
        "# {0} - holder",
        "HolderCare.nameTaken=Another holder is called {0} already. Nothing was changed.",
        "# {0} - most",
        "HolderCare.noPockets=A holder has from 1 to {0} pockets. Nothing was changed.",
        "# {0} - holder",
        "# {1} - pocket",
        "HolderCare.pocketTwice=Two pockets of {0} are called {1}. Nothing was changed.",
        "# {0} - pocket",
        "HolderCare.noRoom=Pocket {0} must take at least 1 drill. Nothing was changed."
    })
    private Optional<Refusal> refusal(UUID id, Holder holder) {
        if (holder.name().isBlank()) {
            return refused("no-name", Bundle.HolderCare_noName());
        }
        if (view.all(Holder.TYPE).stream()
                .anyMatch(h -> !h.id().equals(id) && same(h.value().name(), holder.name()))) {
            return refused("name-taken", Bundle.HolderCare_nameTaken(holder.name()));
        }
        int pockets = holder.pockets().size();
        if (pockets == 0 || pockets > MOST_POCKETS || holder.rows() < 1 || holder.columns() < 1) {
            return refused("no-pockets", Bundle.HolderCare_noPockets(Balance.grouped(MOST_POCKETS)));
        }
        Set<String> names = new HashSet<>();
        Set<UUID> ids = new HashSet<>();
        for (Pocket pocket : holder.pockets()) {
            if (!names.add(pocket.name().strip().toLowerCase(Locale.ROOT)) || !ids.add(pocket.id())) {
                return refused("pocket-twice", Bundle.HolderCare_pocketTwice(holder.name(), pocket.name()));
            }
            if (pocket.capacity().filter(capacity -> capacity < 1).isPresent()) {
                return refused("out-of-range", Bundle.HolderCare_noRoom(pocket.name()));
            }
        }
        return Optional.empty();
    }

    @Messages({
        "# {0} - pocket",
        "HolderCare.seated=A piece is kitted up in {0}. Kit it down first. Nothing was changed.",
        "# {0} - pocket",
        "HolderCare.pocketInUse=Drills are still in {0}. Empty it first. Nothing was changed."
    })
    private Optional<Refusal> pocketInUse(UUID id, Holder old, Holder now) {
        Set<UUID> kept = now.pockets().stream().map(Pocket::id).collect(Collectors.toSet());
        Optional<Pocket> seated = old.pockets().stream()
                .filter(pocket -> !kept.contains(pocket.id()))
                .filter(pocket -> DrillPlaces.pocketsSeated(view).containsKey(new Spot.InPocket(id, pocket.id())))
                .findFirst();
        if (seated.isPresent()) {
            return refused("in-use", Bundle.HolderCare_seated(seated.get().name()));
        }
        return old.pockets().stream()
                .filter(pocket -> !kept.contains(pocket.id()) && !isEmpty(id, pocket))
                .findFirst()
                .map(pocket -> new Refusal("in-use", Bundle.HolderCare_pocketInUse(pocket.name())));
    }

    private static boolean same(String name, String other) {
        return name.strip().equalsIgnoreCase(other.strip());
    }

    private static Optional<Refusal> refused(String code, String text) {
        return Optional.of(new Refusal(code, text));
    }

    @Messages("HolderCare.gone=That holder is no longer in the workshop. Nothing was changed.")
    private static Result<ChangeSet> gone() {
        return Result.refused("no-holder", Bundle.HolderCare_gone());
    }
}
