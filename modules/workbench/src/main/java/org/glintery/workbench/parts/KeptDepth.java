package org.glintery.workbench.parts;

import java.util.Optional;
import java.util.function.Function;
import org.glintery.api.Result;
import org.glintery.api.Stable;
import org.glintery.api.stash.Stash;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Settings;
import org.glintery.api.workshop.Settings.Depth;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/** Changes how much of the workshop is kept: only the book, or the drills as well. Nothing is thrown away. Pure. */
@Stable
public final class KeptDepth {
    private KeptDepth() {}

    @Messages({"KeptDepth.book=Keep only the book", "KeptDepth.drills=Keep the drills as well"})
    public static String words(Depth depth) {
        return depth == Depth.ONLY_THE_BOOK ? Bundle.KeptDepth_book() : Bundle.KeptDepth_drills();
    }

    /** @param stash books what came with the pieces when drills begin to be kept; without it nothing is booked */
    public static Function<View, Result<ChangeSet>> change(Optional<Stash> stash, Depth depth) {
        return view -> {
            if (stash.isPresent() && depth == Depth.DRILLS_AS_WELL) {
                return stash.get().keepDrills(view);
            }
            ChangeSet.Builder change = ChangeSet.named(words(depth));
            Settings.choose(change, view, depth);
            return Result.ok(change.build());
        };
    }

    /** The other one. */
    public static Depth other(View view) {
        return Settings.keepsDrills(view) ? Depth.ONLY_THE_BOOK : Depth.DRILLS_AS_WELL;
    }
}
