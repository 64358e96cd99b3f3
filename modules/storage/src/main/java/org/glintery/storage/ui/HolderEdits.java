package org.glintery.storage.ui;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.ledger.Spot;
import org.glintery.api.storage.Holder;
import org.glintery.api.storage.Pocket;
import org.glintery.api.storage.Storage;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/** Small changes of a holder, each from the newest view. Pure; any thread. */
final class HolderEdits {
    private HolderEdits() {}

    /** Marks a pocket as one in which several kinds may lie, or takes the mark away. */
    static Result<ChangeSet> mixed(View view, Storage storage, Spot.InPocket spot, boolean mixed) {
        return edit(
                view,
                storage,
                spot.holder(),
                old -> with(
                        old,
                        old.name(),
                        old.lentTo(),
                        old.pockets().stream()
                                .map(pocket -> pocket.id().equals(spot.pocket())
                                        ? new Pocket(pocket.id(), pocket.name(), pocket.capacity(), mixed)
                                        : pocket)
                                .toList()));
    }

    /** @param lentTo blank when it is here */
    static Result<ChangeSet> named(View view, Storage storage, UUID id, String name, String lentTo) {
        Optional<String> who = Optional.of(lentTo.strip()).filter(w -> !w.isEmpty());
        return edit(view, storage, id, old -> with(old, name.strip(), who, old.pockets()));
    }

    private static Holder with(Holder old, String name, Optional<String> lentTo, List<Pocket> pockets) {
        return new Holder(name, old.rows(), old.columns(), pockets, old.keptAt(), lentTo, old.notes());
    }

    @Messages("HolderEdits.gone=That holder is no longer in the workshop. Nothing was changed.")
    private static Result<ChangeSet> edit(
            View view, Storage storage, UUID id, java.util.function.UnaryOperator<Holder> edit) {
        return view.find(Holder.TYPE, id)
                .map(Stored::value)
                .map(old -> storage.editHolder(view, id, edit.apply(old)))
                .orElseGet(() -> Result.refused("no-holder", Bundle.HolderEdits_gone()));
    }
}
