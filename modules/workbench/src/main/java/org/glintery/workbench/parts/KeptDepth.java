package org.glintery.workbench.parts;

import java.util.Optional;
import java.util.function.Function;
import org.glintery.api.Result;
import org.glintery.api.Stable;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Settings;
import org.glintery.api.workshop.Settings.Depth;
import org.glintery.api.workshop.Stored;
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

    public static Function<View, Result<ChangeSet>> change(Depth depth) {
        return view -> {
            Optional<Stored<Settings>> old = view.find(Settings.TYPE, Settings.ID);
            Settings before = old.map(Stored::value).orElse(Settings.USUAL);
            Settings now = new Settings(depth, before.currency(), before.demo());
            ChangeSet.Builder change = ChangeSet.named(words(depth));
            old.ifPresentOrElse(
                    stored -> change.replace(Settings.TYPE, stored, now),
                    () -> change.create(Settings.TYPE, Settings.ID, now));
            return Result.ok(change.build());
        };
    }

    /** The other one. */
    public static Depth other(View view) {
        return Settings.keepsDrills(view) ? Depth.ONLY_THE_BOOK : Depth.DRILLS_AS_WELL;
    }
}
