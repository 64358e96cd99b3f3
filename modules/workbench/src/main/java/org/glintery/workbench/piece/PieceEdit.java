package org.glintery.workbench.piece;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.Canvas;
import org.glintery.api.stash.Coverage;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.Money;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.stash.Stash;
import org.glintery.api.storage.KeepingPlaces;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;

/**
 * What is known of a piece and its kit, as it is typed. Made without Swing; immutable.
 *
 * @param drilled the drilled area in cm, such as "35 x 45"; may be blank
 * @param cloth the whole canvas in cm; may be blank
 * @param sections a whole number; may be blank
 * @param keptAt the name of a keeping place, which is made if there is none; may be blank
 * @param kit absent for a piece without one
 */
record PieceEdit(
        String title,
        Standing standing,
        Optional<About> since,
        Optional<Shape> shape,
        Coverage coverage,
        String drilled,
        String cloth,
        String sections,
        String keptAt,
        Optional<KitEdit> kit) {

    /** @param price and {@code postage} numbers with a comma or a point; may be blank */
    record KitEdit(String source, Optional<About> orderedOn, Optional<About> arrivedOn, String price, String postage) {}

    private static final String NOTHING = "nothing-to-change";

    /** As it stands; empty when the piece is gone. */
    static Optional<PieceEdit> of(View view, UUID id) {
        return view.find(Piece.TYPE, id).map(stored -> {
            Piece piece = stored.value();
            Canvas canvas = piece.canvas();
            return new PieceEdit(
                    piece.title(),
                    piece.standing(),
                    piece.standingSince(),
                    piece.drillShape(),
                    piece.coverage(),
                    SizeWords.typed(canvas.drilledWidthMm(), canvas.drilledHeightMm()),
                    SizeWords.typed(canvas.clothWidthMm(), canvas.clothHeightMm()),
                    piece.sections().map(String::valueOf).orElse(""),
                    KeepingPlaces.name(view, piece.keptAt()),
                    kit(view, piece).map(kit -> of(kit.value())));
        });
    }

    private static KitEdit of(Kit kit) {
        return new KitEdit(
                kit.source().orElse(""), kit.orderedOn(), kit.arrivedOn(), typed(kit.price()), typed(kit.postage()));
    }

    /** The change, or what is not understood. */
    Result<ChangeSet> change(View view, UUID id, Stash stash) {
        Optional<Stored<Piece>> stored = view.find(Piece.TYPE, id);
        if (stored.isEmpty()) {
            return Result.refused("gone", Bundle.PieceChanges_gone());
        }
        Piece old = stored.get().value();
        Optional<KeepingPlaces.Named> place = KeepingPlaces.named(view, keptAt);
        return piece(old, place.map(KeepingPlaces.Named::id))
                .then(piece -> ofPiece(view, id, stash, old, piece))
                .then(change ->
                        Result.ok(place.map(named -> withPlace(change, named)).orElse(change)))
                .then(change -> kit(view, old)
                        .map(found -> ofKit(view, stash, found, change))
                        .orElseGet(() -> Result.ok(change)))
                .then(change -> change.operations().isEmpty() ? Result.refused(NOTHING, "") : Result.ok(change));
    }

    private static ChangeSet withPlace(ChangeSet change, KeepingPlaces.Named place) {
        return place.making().isEmpty()
                ? change
                : change.join(ChangeSet.named(change.sentence())
                        .addAll(place.making())
                        .build());
    }

    private static Result<ChangeSet> ofPiece(View view, UUID id, Stash stash, Piece old, Piece now) {
        return now.equals(old) ? Result.ok(ChangeSet.named("").build()) : stash.editPiece(view, id, now);
    }

    private Result<ChangeSet> ofKit(View view, Stash stash, Stored<Kit> found, ChangeSet change) {
        return kit(found.value()).then(now -> {
            if (now.equals(found.value())) {
                return Result.ok(change);
            }
            return stash.editKit(view, found.id(), now)
                    .then(more -> Result.ok(change.operations().isEmpty() ? more : change.join(more)));
        });
    }

    @Messages({
        "PieceEdit.needsTitle=Give it a title first. A few words are enough.",
        "PieceEdit.size=A size is not understood. Write it as 35 x 45, or leave it empty.",
        "PieceEdit.sections=Sections are a whole number, or empty."
    })
    private Result<Piece> piece(Piece old, Optional<UUID> place) {
        Optional<Canvas> drilledArea = SizeWords.read(drilled);
        Optional<Canvas> whole = SizeWords.read(cloth);
        if (title.isBlank()) {
            return Result.refused("no-title", Bundle.PieceEdit_needsTitle());
        }
        if (drilledArea.isEmpty() || whole.isEmpty()) {
            return Result.refused("size", Bundle.PieceEdit_size());
        }
        if (!sections.strip().matches("([1-9]\\d{0,3})?")) {
            return Result.refused("sections", Bundle.PieceEdit_sections());
        }
        Canvas canvas = new Canvas(
                drilledArea.get().drilledWidthMm(),
                drilledArea.get().drilledHeightMm(),
                whole.get().drilledWidthMm(),
                whole.get().drilledHeightMm(),
                old.canvas().pitchMm(),
                old.canvas().columns(),
                old.canvas().rows());
        return Result.ok(new Piece(
                title.strip(),
                old.kit(),
                old.madeAgainFrom(),
                standing,
                since,
                coverage,
                shape,
                canvas,
                Optional.of(sections.strip()).filter(s -> !s.isEmpty()).map(Integer::valueOf),
                old.pictures(),
                place,
                old.story()));
    }

    @Messages("PieceEdit.price=A price is a number such as 34.50, or empty.")
    private Result<Kit> kit(Kit old) {
        if (kit.isEmpty()) {
            return Result.ok(old);
        }
        KitEdit typed = kit.get();
        if (money(typed.price()).isEmpty() || money(typed.postage()).isEmpty()) {
            return Result.refused("price", Bundle.PieceEdit_price());
        }
        return Result.ok(new Kit(
                old.title(),
                Optional.of(typed.source().strip()).filter(s -> !s.isEmpty()),
                typed.orderedOn(),
                typed.arrivedOn(),
                money(typed.price()).get(),
                money(typed.postage()).get(),
                old.keptAt(),
                old.pictures(),
                old.notes()));
    }

    /** The outer is empty when the text is not understood, the inner when there is none. */
    private static Optional<Optional<Money>> money(String typed) {
        String number = typed.strip().replace(',', '.');
        if (number.isEmpty()) {
            return Optional.of(Optional.empty());
        }
        return number.matches("\\d{1,7}(\\.\\d{1,2})?")
                ? Optional.of(Optional.of(new Money(new BigDecimal(number))))
                : Optional.empty();
    }

    private static String typed(Optional<Money> money) {
        return money.map(m -> m.amount().toPlainString()).orElse("");
    }

    private static Optional<Stored<Kit>> kit(View view, Piece piece) {
        return piece.kit().flatMap(id -> view.find(Kit.TYPE, id));
    }
}
