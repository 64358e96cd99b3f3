package org.glintery.finishes;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.glintery.api.Result;
import org.glintery.api.activework.Completion;
import org.glintery.api.finishes.Finish;
import org.glintery.api.finishes.Finishes;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
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
        Stream<ToWrite> begun = all(view).stream()
                .filter(finish -> !finish.value().later().isEmpty())
                .map(finish -> new ToWrite(
                        finish.id(), finish.value().title(), finish.value().later()));
        return Stream.concat(begun, unbegun(view)).toList();
    }

    /** Made pieces that nothing was begun for, such as those completed while finishes were switched off. */
    private static Stream<ToWrite> unbegun(View view) {
        return view.all(Piece.TYPE).stream()
                .filter(piece -> piece.value().standing() == Standing.MADE)
                .filter(piece -> view.find(Finish.TYPE, piece.id()).isEmpty())
                .map(piece -> new ToWrite(piece.id(), piece.value().title(), EnumSet.allOf(Finish.Field.class)))
                .sorted(Comparator.comparing(ToWrite::title));
    }

    @Override
    public Result<ChangeSet> completing(View view, Completion completion) {
        return new FinishBeginning(view, completion).begin();
    }
}
