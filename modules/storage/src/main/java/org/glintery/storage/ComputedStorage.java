package org.glintery.storage;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.activework.Completion;
import org.glintery.api.storage.Holder;
import org.glintery.api.storage.KitUp;
import org.glintery.api.storage.Storage;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/** Storage, computed from views. Holds nothing; any thread. */
public final class ComputedStorage implements Storage {

    @Override
    public Result<ChangeSet> addHolder(View view, UUID id, Holder holder) {
        return new HolderCare(view).add(id, holder);
    }

    @Override
    public Result<ChangeSet> editHolder(View view, UUID id, Holder holder) {
        return new HolderCare(view).edit(id, holder);
    }

    @Override
    public Result<ChangeSet> removeHolder(View view, UUID id) {
        return new HolderCare(view).remove(id);
    }

    @Override
    public Result<KitUpPlan> planKitUp(View view, UUID piece, UUID holder, Optional<About> on) {
        return new KitUpPlanning(view, piece).into(holder, on);
    }

    @Override
    public Result<KitDownPlan> planKitDown(View view, UUID piece, long repairDrills, Optional<About> on) {
        return new KitDownPlanning(view, piece).plan(repairDrills, on);
    }

    @Override
    public Result<LeftoversPlan> planLeftovers(View view, UUID piece, long repairDrills, Optional<About> on) {
        return new KitDownPlanning(view, piece).leftovers(repairDrills, on);
    }

    @Override
    public List<Whereabouts> find(View view, String text) {
        return new DrillWhereabouts(view).find(text);
    }

    @Override
    public List<Stored<Holder>> freeHolders(View view) {
        return new FreeHolders(view).all();
    }

    /** Its holder waits to be cleared from now on. */
    @Override
    @Messages("ComputedStorage.toClear=Mark the holder to be cleared")
    public Result<ChangeSet> completing(View view, Completion completion) {
        ChangeSet.Builder change = ChangeSet.named(Bundle.ComputedStorage_toClear());
        view.find(KitUp.TYPE, completion.piece()).ifPresent(stored -> {
            KitUp old = stored.value();
            change.replace(KitUp.TYPE, stored, new KitUp(old.holder(), old.seats(), old.on(), true));
        });
        return Result.ok(change.build());
    }
}
