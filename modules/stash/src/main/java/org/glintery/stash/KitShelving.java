package org.glintery.stash;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.stash.CardEntry;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.NewKit;
import org.glintery.api.stash.NewKit.NewPiece;
import org.glintery.api.stash.Piece;
import org.glintery.api.storage.BagNames;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.View;

/** Takes a kit, or a piece without one, into the workshop. Any thread. */
final class KitShelving {

    private final View view;

    KitShelving(View view) {
        this.view = view;
    }

    Result<ChangeSet> shelve(NewKit kit) {
        if (kit.kit().title().isBlank()) {
            return Result.refused("no-title", "A kit needs a title. Nothing was shelved.");
        }
        if (view.find(Kit.TYPE, kit.id()).isPresent()) {
            return Result.refused(
                    "already-there",
                    "The kit " + kit.kit().title() + " is in the workshop already. Nothing was changed.");
        }
        ChangeSet.Builder change = ChangeSet.named("Shelve " + kit.kit().title());
        change.create(Kit.TYPE, kit.id(), kit.kit());
        kit.blobs().forEach(change::blob);
        return pieces(change, kit.pieces(), Optional.of(kit), kit.cards());
    }

    Result<ChangeSet> addPiece(UUID id, Piece piece, List<LegendLine> legend) {
        ChangeSet.Builder change = ChangeSet.named("Add " + piece.title());
        return pieces(change, List.of(new NewPiece(id, piece, Legend.of(legend))), Optional.empty(), Map.of());
    }

    private Result<ChangeSet> pieces(
            ChangeSet.Builder change,
            List<NewPiece> pieces,
            Optional<NewKit> kit,
            Map<String, Map<String, CardEntry>> cards) {
        List<String> warnings = new ArrayList<>();
        CardLearning learning = new CardLearning(view).told(cards);
        BagNames names = new BagNames(view);
        for (NewPiece piece : pieces) {
            Optional<Refusal> refusal = refusal(piece, kit.flatMap(k -> k.kit().source()));
            if (refusal.isPresent()) {
                return Result.refused(refusal.get());
            }
            warnings.addAll(warnings(piece));
            learning.used(piece.legend().lines().stream().map(LegendLine::drill).toList());
            Piece value = kit.map(k -> piece.piece().withKit(k.id())).orElse(piece.piece());
            change.create(Piece.TYPE, piece.id(), value);
            if (!piece.legend().equals(Legend.of(List.of()))) {
                change.create(Legend.TYPE, piece.id(), piece.legend());
            }
            new SupplyBooking(view, piece.id(), value, kit.map(NewKit::kit), names)
                    .book(change, piece.legend().lines());
        }
        learning.into(change);
        warnings.addAll(learning.warnings());
        return Result.ok(change.build(), warnings);
    }

    private Optional<Refusal> refusal(NewPiece piece, Optional<String> source) {
        if (piece.piece().title().isBlank()) {
            return Optional.of(new Refusal("no-title", "A piece needs a title. Nothing was shelved."));
        }
        if (view.find(Piece.TYPE, piece.id()).isPresent()) {
            return Optional.of(new Refusal(
                    "already-there",
                    "The piece " + piece.piece().title() + " is in the workshop already. Nothing was changed."));
        }
        return LegendCheck.refusal(piece.legend().lines(), SuppliesBooked.drillsPerBag(view, piece.id(), source));
    }

    private List<String> warnings(NewPiece piece) {
        List<String> warnings =
                new ArrayList<>(LegendCheck.warnings(piece.legend().lines()));
        String title = piece.piece().title().strip();
        if (view.all(Piece.TYPE).stream()
                .anyMatch(p -> p.value().title().strip().equalsIgnoreCase(title))) {
            warnings.add("Another piece is called " + title
                    + " too. Give one of them a title of its own to tell them apart.");
        }
        return warnings;
    }
}
