package org.glintery.storage;

import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.glintery.api.ledger.Spot;
import org.glintery.api.storage.DrillPlaces;
import org.glintery.api.storage.Holder;
import org.glintery.api.storage.KitUp;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;

/** Which holders nothing is in, and which of them can be kitted into. The one place that says so; any thread. */
public final class FreeHolders {

    private final View view;
    private final Set<UUID> kittedUp;

    public FreeHolders(View view) {
        this.view = view;
        this.kittedUp =
                view.all(KitUp.TYPE).stream().map(k -> k.value().holder()).collect(Collectors.toSet());
    }

    /** Whether no drills lie in it and no piece sits there, wherever it is. */
    public boolean isEmpty(Stored<Holder> holder) {
        return !kittedUp.contains(holder.id())
                && holder.value().pockets().stream()
                        .allMatch(pocket -> DrillPlaces.isEmpty(view, new Spot.InPocket(holder.id(), pocket.id())));
    }

    /** Whether it is empty and here: one that is lent can't be kitted into. */
    public boolean isFree(Stored<Holder> holder) {
        return holder.value().lentTo().isEmpty() && isEmpty(holder);
    }

    List<Stored<Holder>> all() {
        return view.all(Holder.TYPE).stream().filter(this::isFree).toList();
    }
}
