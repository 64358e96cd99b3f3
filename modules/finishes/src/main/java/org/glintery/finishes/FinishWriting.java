package org.glintery.finishes;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.finishes.Finish;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.time.About;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/** Writes the record of one piece; an old finish brings its piece with it. Any thread. */
final class FinishWriting {

    private final View view;
    private final UUID id;
    private final Optional<Stored<Piece>> piece;
    private final Optional<Stored<Finish>> old;

    FinishWriting(View view, UUID id) {
        this.view = view;
        this.id = id;
        this.piece = view.find(Piece.TYPE, id);
        this.old = view.find(Finish.TYPE, id);
    }

    @Messages({
        "# {0} - title",
        "FinishWriting.write=Write up {0}",
        "# {0} - title",
        "FinishWriting.notMade={0} is not made yet. The finish was kept; complete the piece when it is done."
    })
    Result<ChangeSet> write(Finish finish, List<Blob> pictures) {
        Finish kept = FinishFields.leaving(finish, finish.later());
        ChangeSet.Builder change = ChangeSet.named(Bundle.FinishWriting_write(kept.title()));
        pictures.stream().filter(blob -> !view.blobs().containsKey(blob.hash())).forEach(change::blob);
        if (old.isPresent()) {
            change.replace(Finish.TYPE, old.get(), kept);
        } else {
            change.create(Finish.TYPE, id, kept);
        }
        piece.ifPresentOrElse(there -> redate(change, there, kept), () -> makePiece(change, kept));
        boolean unmade =
                piece.filter(p -> p.value().standing() != Standing.MADE).isPresent();
        return Result.ok(change.build(), unmade ? List.of(Bundle.FinishWriting_notMade(kept.title())) : List.of());
    }

    private void makePiece(ChangeSet.Builder change, Finish finish) {
        Piece made = Piece.titled(finish.title(), Standing.MADE).with(Standing.MADE, finish.finishedOn());
        change.create(Piece.TYPE, id, made);
    }

    /** A made piece is made since its finish: when that date is corrected, the piece's goes with it. */
    private void redate(ChangeSet.Builder change, Stored<Piece> stored, Finish finish) {
        Optional<About> since = stored.value().standingSince();
        Optional<About> before = old.flatMap(f -> f.value().finishedOn());
        boolean follows = since.isEmpty() || since.equals(before);
        if (stored.value().standing() == Standing.MADE && follows && !since.equals(finish.finishedOn())) {
            change.replace(Piece.TYPE, stored, stored.value().with(Standing.MADE, finish.finishedOn()));
        }
    }
}
