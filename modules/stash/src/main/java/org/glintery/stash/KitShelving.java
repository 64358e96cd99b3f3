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
import org.openide.util.NbBundle.Messages;

/** Takes a kit, or a piece without one, into the workshop. Any thread. */
final class KitShelving {

    private final View view;

    KitShelving(View view) {
        this.view = view;
    }

    @Messages({
        "KitShelving.kitWithoutTitle=A kit needs a title. Nothing was shelved.",
        "# {0} - title",
        "KitShelving.kitThere=The kit {0} is in the workshop already. Nothing was changed.",
        "# {0} - title",
        "KitShelving.shelve=Shelve {0}"
    })
    Result<ChangeSet> shelve(NewKit kit) {
        if (kit.kit().title().isBlank()) {
            return Result.refused("no-title", Bundle.KitShelving_kitWithoutTitle());
        }
        if (view.find(Kit.TYPE, kit.id()).isPresent()) {
            return Result.refused(
                    "already-there", Bundle.KitShelving_kitThere(kit.kit().title()));
        }
        ChangeSet.Builder change =
                ChangeSet.named(Bundle.KitShelving_shelve(kit.kit().title()));
        change.create(Kit.TYPE, kit.id(), kit.kit());
        kit.blobs().forEach(change::blob);
        return pieces(change, kit.pieces(), Optional.of(kit), kit.cards());
    }

    @Messages({"# {0} - title", "KitShelving.add=Add {0}"})
    Result<ChangeSet> addPiece(UUID id, Piece piece, List<LegendLine> legend) {
        ChangeSet.Builder change = ChangeSet.named(Bundle.KitShelving_add(piece.title()));
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

    @Messages({
        "KitShelving.pieceWithoutTitle=A piece needs a title. Nothing was shelved.",
        "# {0} - title",
        "KitShelving.pieceThere=The piece {0} is in the workshop already. Nothing was changed."
    })
    private Optional<Refusal> refusal(NewPiece piece, Optional<String> source) {
        if (piece.piece().title().isBlank()) {
            return Optional.of(new Refusal("no-title", Bundle.KitShelving_pieceWithoutTitle()));
        }
        if (view.find(Piece.TYPE, piece.id()).isPresent()) {
            return Optional.of(new Refusal(
                    "already-there", Bundle.KitShelving_pieceThere(piece.piece().title())));
        }
        return LegendCheck.refusal(piece.legend().lines(), SuppliesBooked.drillsPerBag(view, piece.id(), source));
    }

    @Messages({
        "# {0} - title",
        "KitShelving.sameTitle=Another piece is called {0} too. Give one of them a title of its own to tell them apart."
    })
    private List<String> warnings(NewPiece piece) {
        List<String> warnings =
                new ArrayList<>(LegendCheck.warnings(piece.legend().lines()));
        String title = piece.piece().title().strip();
        if (view.all(Piece.TYPE).stream()
                .anyMatch(p -> p.value().title().strip().equalsIgnoreCase(title))) {
            warnings.add(Bundle.KitShelving_sameTitle(title));
        }
        return warnings;
    }
}
