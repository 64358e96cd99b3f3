package org.glintery.finishes;

import java.util.List;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.activework.Completion;
import org.glintery.api.finishes.Finish;
import org.glintery.api.finishes.Finishes;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Derived;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;

/** The finishes, computed from views. Holds nothing; any thread. */
public final class ComputedFinishes implements Finishes {
    private static final Derived<List<Stored<Finish>>> LATEST_FIRST = FinishOrder::latestFirst;

    @Override
    public Result<ChangeSet> write(View view, UUID piece, Finish finish, List<Blob> pictures) {
        return FinishCheck.of(view, finish, pictures)
                .then(checked -> new FinishWriting(view, piece).write(checked, pictures));
    }

    @Override
    public List<Stored<Finish>> all(View view) {
        return view.derived(LATEST_FIRST);
    }

    @Override
    public List<ToWrite> stillToWrite(View view) {
        return all(view).stream()
                .filter(finish -> !finish.value().later().isEmpty())
                .map(finish -> new ToWrite(
                        finish.id(), finish.value().title(), finish.value().later()))
                .toList();
    }

    @Override
    public Result<ChangeSet> completing(View view, Completion completion) {
        return new FinishBeginning(view, completion).begin();
    }
}
