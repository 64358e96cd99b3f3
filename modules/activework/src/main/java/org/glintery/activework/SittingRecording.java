package org.glintery.activework;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.activework.Laid;
import org.glintery.api.activework.Sitting;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Operation;
import org.glintery.api.workshop.Precondition;
import org.glintery.api.workshop.Settings;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/** Records sittings and corrects them, the drills they name included. Any thread. */
final class SittingRecording {

    private final View view;
    private final Bench bench;

    SittingRecording(View view, Bench bench) {
        this.view = view;
        this.bench = bench;
    }

    @Messages({"# {0} - title", "SittingRecording.sit=Sit at {0}"})
    Result<ChangeSet> record(UUID id, Sitting sitting) {
        Optional<Stored<Piece>> piece = view.find(Piece.TYPE, sitting.piece());
        if (piece.isEmpty()) {
            return Bench.noPiece();
        }
        ChangeSet.Builder change = ChangeSet.named(
                        Bundle.SittingRecording_sit(piece.get().value().title()))
                .create(Sitting.TYPE, id, sitting);
        return checked(id, sitting, Optional.empty(), piece.get().value())
                .then(warnings -> book(change, id, sitting, piece.get().value(), Map.of(), warnings))
                .then(sat -> ontoTheBench(sat, piece.get(), sitting));
    }

    @Messages({
        "SittingRecording.otherPiece=A sitting stays with its piece. Nothing was changed.",
        "# {0} - title",
        "SittingRecording.edit=Edit a sitting at {0}"
    })
    Result<ChangeSet> edit(UUID id, Sitting sitting) {
        Optional<Stored<Sitting>> old = view.find(Sitting.TYPE, id);
        Optional<Stored<Piece>> piece = view.find(Piece.TYPE, sitting.piece());
        if (old.isEmpty()) {
            return noSitting();
        }
        if (piece.isEmpty()) {
            return Bench.noPiece();
        }
        if (!old.get().value().piece().equals(sitting.piece())) {
            return Result.refused("other-piece", Bundle.SittingRecording_otherPiece());
        }
        ChangeSet.Builder change = ChangeSet.named(
                        Bundle.SittingRecording_edit(piece.get().value().title()))
                .replace(Sitting.TYPE, old.get(), sitting);
        Map<String, Long> before = old.get().value().laid().bySymbol();
        return checked(id, sitting, Optional.of(old.get().value()), piece.get().value())
                .then(warnings -> book(change, id, sitting, piece.get().value(), before, warnings));
    }

    Result<ChangeSet> remove(UUID id) {
        Optional<Stored<Sitting>> old = view.find(Sitting.TYPE, id);
        if (old.isEmpty()) {
            return noSitting();
        }
        Sitting sitting = old.get().value();
        Optional<Piece> piece = view.find(Piece.TYPE, sitting.piece()).map(Stored::value);
        ChangeSet.Builder change = ChangeSet.named(Bundle.SittingRecording_remove(
                        sitting.day().words(), piece.map(Piece::title).orElse("")))
                .require(new Precondition.DocumentAt(
                        Sitting.TYPE.ref(id), old.get().version()))
                .remove(Sitting.TYPE.ref(id));
        Sitting nothingLaid = withoutSymbols(sitting);
        return piece.map(p -> book(change, id, nothingLaid, p, sitting.laid().bySymbol(), List.of()))
                .orElseGet(() -> Result.ok(change.build()));
    }

    private static Sitting withoutSymbols(Sitting sitting) {
        return new Sitting(
                sitting.piece(),
                sitting.day(),
                sitting.startedAt(),
                sitting.zone(),
                sitting.minutes(),
                sitting.pausedMinutes(),
                Laid.NOT_SAID,
                sitting.where(),
                sitting.note());
    }

    @Messages({
        "SittingRecording.noSitting=That sitting is no longer in the workshop. Nothing was changed.",
        "# {0} - day",
        "# {1} - title",
        "SittingRecording.remove=Take away the sitting of {0} at {1}"
    })
    private static Result<ChangeSet> noSitting() {
        return Result.refused("no-sitting", Bundle.SittingRecording_noSitting());
    }

    private Result<List<String>> checked(UUID id, Sitting sitting, Optional<Sitting> before, Piece piece) {
        Optional<Refusal> refusal = new SittingCheck(view).refusal(sitting, before);
        if (refusal.isPresent()) {
            return Result.refused(refusal.get());
        }
        return Result.ok(
                Whole.saysSomething(sitting.laid()) ? new Overrun(view, id, sitting, piece).warnings() : List.of());
    }

    /** A piece that is made had the rest of its drills booked when it was completed: more would count twice. */
    private Result<ChangeSet> book(
            ChangeSet.Builder change,
            UUID id,
            Sitting sitting,
            Piece piece,
            Map<String, Long> before,
            List<String> warnings) {
        List<String> all = new ArrayList<>(warnings);
        if (Settings.keepsDrills(view) && piece.standing() != Standing.MADE && piece.standing() != Standing.LET_GO) {
            SymbolBooking booking = new SymbolBooking(view, id, sitting.piece(), piece.title(), sitting.day());
            all.addAll(booking.book(change, before, sitting.laid().bySymbol()));
        }
        return Result.ok(change.build(), all);
    }

    private Result<ChangeSet> ontoTheBench(ChangeSet sat, Stored<Piece> piece, Sitting sitting) {
        return bench.comingOnto(view, piece, sitting.day())
                .map(coming -> coming.then(change -> join(sat, change, piece.value(), sitting)))
                .orElseGet(() -> Result.ok(sat));
    }

    /** Drills that only come into the house with this change can't be booked out of their bag in it as well. */
    @Messages({
        "# {0} - title",
        "SittingRecording.notHere=The drills of {0} are not in the house yet, so none can be laid by symbol. Put the piece on the bench first. Nothing was changed."
    })
    private static Result<ChangeSet> join(ChangeSet sat, ChangeSet coming, Piece piece, Sitting sitting) {
        boolean bringsDrills = coming.operations().stream().anyMatch(Operation.Post.class::isInstance);
        return bringsDrills && !sitting.laid().bySymbol().isEmpty()
                ? Result.refused("not-in-the-house", Bundle.SittingRecording_notHere(piece.title()))
                : Result.ok(sat.join(coming));
    }
}
