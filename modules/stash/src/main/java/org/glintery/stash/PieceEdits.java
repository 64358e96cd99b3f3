package org.glintery.stash;

import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.storage.Bag;
import org.glintery.api.storage.BagNames;
import org.glintery.api.storage.DrillPlaces;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/**
 * Edits pieces and kits. A piece that comes into the house brings its supplies; one that is made or let go no longer
 * holds drills back. Any thread.
 */
final class PieceEdits {

    private final View view;

    PieceEdits(View view) {
        this.view = view;
    }

    @Messages("PieceEdits.noPiece=That piece is no longer in the workshop. Nothing was changed.")
    static <T> Result<T> noPiece() {
        return Result.refused("no-piece", Bundle.PieceEdits_noPiece());
    }

    static Optional<Kit> kitOf(View view, Piece piece) {
        return piece.kit().flatMap(id -> view.find(Kit.TYPE, id)).map(Stored::value);
    }

    /** Tomorrow may be today where somebody else's clock stands, and passes. */
    @Messages({
        "# {0} - title",
        "PieceEdits.edit=Edit {0}",
        "# {0} - day",
        "PieceEdits.notYet=It can''t stand so since {0}, which has not been yet. Check the date. Nothing was changed."
    })
    Result<ChangeSet> editPiece(UUID id, Piece piece) {
        Optional<About> told = piece.standingSince()
                .filter(since -> view.find(Piece.TYPE, id)
                        .flatMap(old -> old.value().standingSince())
                        .filter(since::equals)
                        .isEmpty());
        Optional<About> later = told.filter(since -> since.earliest()
                .filter(day -> day.isAfter(view.day().plusDays(1)))
                .isPresent());
        if (later.isPresent()) {
            return Result.refused(
                    "future-day", Bundle.PieceEdits_notYet(later.get().words()));
        }
        return edit(id, piece, Bundle.PieceEdits_edit(piece.title()));
    }

    Result<ChangeSet> setStanding(UUID id, Standing standing, Optional<About> since) {
        return view.find(Piece.TYPE, id)
                .map(old -> edit(
                        id,
                        old.value().with(standing, since),
                        sentence(standing, old.value().title())))
                .orElseGet(PieceEdits::noPiece);
    }

    @Messages({
        "PieceEdits.noKit=That kit is no longer in the workshop. Nothing was changed.",
        "PieceEdits.kitWithoutTitle=A kit needs a title. Nothing was changed.",
        "# {0} - title",
        "PieceEdits.editKit=Edit the kit {0}"
    })
    Result<ChangeSet> editKit(UUID id, Kit kit) {
        Optional<Stored<Kit>> old = view.find(Kit.TYPE, id);
        if (old.isEmpty()) {
            return Result.refused("no-kit", Bundle.PieceEdits_noKit());
        }
        if (kit.title().isBlank()) {
            return Result.refused("no-title", Bundle.PieceEdits_kitWithoutTitle());
        }
        return Result.ok(ChangeSet.named(Bundle.PieceEdits_editKit(kit.title()))
                .replace(Kit.TYPE, old.get(), kit)
                .build());
    }

    @Messages("PieceEdits.pieceWithoutTitle=A piece needs a title. Nothing was changed.")
    private Result<ChangeSet> edit(UUID id, Piece piece, String sentence) {
        Optional<Stored<Piece>> old = view.find(Piece.TYPE, id);
        if (old.isEmpty()) {
            return noPiece();
        }
        if (piece.title().isBlank()) {
            return Result.refused("no-title", Bundle.PieceEdits_pieceWithoutTitle());
        }
        Optional<Refusal> refusal =
                old.get().value().standing() == piece.standing() ? Optional.empty() : supplies(id, piece);
        if (refusal.isPresent()) {
            return Result.refused(refusal.get());
        }
        ChangeSet.Builder change = ChangeSet.named(sentence).replace(Piece.TYPE, old.get(), piece);
        BagNames names = new BagNames(view);
        renameBag(change, id, old.get().value().title(), piece.title(), names);
        if (old.get().value().standing() != piece.standing()) {
            changeStanding(change, id, piece, names);
        }
        return Result.ok(change.build());
    }

    /** Its source may have told of so large a bag since that the supplies can't be booked any more. */
    private Optional<Refusal> supplies(UUID id, Piece piece) {
        Optional<String> source = kitOf(view, piece).flatMap(Kit::source);
        return LegendCheck.refusal(Legend.of(view, id).lines(), SuppliesBooked.drillsPerBag(view, id, source));
    }

    private void changeStanding(ChangeSet.Builder change, UUID id, Piece piece, BagNames names) {
        if (piece.standing() == Standing.MADE || piece.standing() == Standing.LET_GO) {
            new PieceReservations(view, id).release(change);
        } else {
            new SupplyBooking(view, id, piece, kitOf(view, piece), names)
                    .book(change, Legend.of(view, id).lines());
        }
    }

    /** The bag of the kit is named after the piece, for as long as nobody has named it otherwise. */
    private void renameBag(ChangeSet.Builder change, UUID id, String oldTitle, String newTitle, BagNames names) {
        if (oldTitle.equals(newTitle)) {
            return;
        }
        Optional<Stored<Bag>> bag = new DrillPlaces(view, id)
                .kitBags().stream()
                        .findFirst()
                        .map(spot -> ((Spot.InBag) spot).bag())
                        .flatMap(bagId -> view.find(Bag.TYPE, bagId))
                        .filter(stored -> stored.value().name().equals(oldTitle.strip()));
        bag.ifPresent(stored -> {
            Bag old = stored.value();
            change.replace(Bag.TYPE, stored, old.withName(names.free(newTitle)));
        });
    }

    @Messages({
        "# {0} - title",
        "PieceEdits.hopedFor=Hope for {0}",
        "# {0} - title",
        "PieceEdits.ordered=Order {0}",
        "# {0} - title",
        "PieceEdits.shelved=Shelve {0}",
        "# {0} - title",
        "PieceEdits.onTheBench=Put {0} on the bench",
        "# {0} - title",
        "PieceEdits.resting=Let {0} rest",
        "# {0} - title",
        "PieceEdits.made=Call {0} made",
        "# {0} - title",
        "PieceEdits.letGo=Let go of {0}"
    })
    private static String sentence(Standing standing, String title) {
        return switch (standing) {
            case HOPED_FOR -> Bundle.PieceEdits_hopedFor(title);
            case ORDERED -> Bundle.PieceEdits_ordered(title);
            case SHELVED -> Bundle.PieceEdits_shelved(title);
            case ON_THE_BENCH -> Bundle.PieceEdits_onTheBench(title);
            case RESTING -> Bundle.PieceEdits_resting(title);
            case MADE -> Bundle.PieceEdits_made(title);
            case LET_GO -> Bundle.PieceEdits_letGo(title);
        };
    }
}
