package org.glintery.workbench.shelves;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.Canvas;
import org.glintery.api.stash.CardEntry;
import org.glintery.api.stash.ColourCard;
import org.glintery.api.stash.Coverage;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.NewKit;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.stash.Stash;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.View;
import org.glintery.workbench.parts.PictureDrop;
import org.openide.util.NbBundle.Messages;

/**
 * What a form says of a new kit with one piece, or of a piece without a kit. Pure.
 *
 * @param withKit whether it was bought as a kit
 * @param legend in printed order; empty when there is none yet
 */
record KitDraft(
        String title,
        boolean withKit,
        Optional<String> source,
        Standing standing,
        Optional<Shape> shape,
        Coverage coverage,
        Canvas canvas,
        List<PictureDrop.Taken> pictures,
        List<LegendLine> legend,
        Map<String, CardEntry> entries) {

    @Messages({"# {0} - title", "KitDraft.piece=Shelve {0}"})
    Result<ChangeSet> change(View view, Stash stash, UUID pieceId, Clock clock) {
        UUID kitId = UUID.randomUUID();
        Piece piece = piece(withKit ? Optional.of(kitId) : Optional.empty(), clock);
        if (!withKit) {
            var change = ChangeSet.named(Bundle.KitDraft_piece(title)).create(Piece.TYPE, pieceId, piece);
            pictures.forEach(p -> change.blob(p.blob()));
            return Result.ok(change.build());
        }
        Kit plain = Kit.titled(title);
        Kit kit = new Kit(
                title,
                source,
                plain.orderedOn(),
                plain.arrivedOn(),
                plain.price(),
                plain.postage(),
                plain.keptAt(),
                List.of(),
                "");
        return stash.shelve(
                view,
                new NewKit(
                        kitId,
                        kit,
                        List.of(new NewKit.NewPiece(pieceId, piece, legend)),
                        entries.isEmpty() ? Map.of() : Map.of(ColourCard.OWN, entries),
                        pictures.stream().map(PictureDrop.Taken::blob).toList()));
    }

    private Piece piece(Optional<UUID> kit, Clock clock) {
        return new Piece(
                title,
                kit,
                Optional.empty(),
                standing,
                Optional.of(About.on(LocalDate.now(clock))),
                coverage,
                shape,
                canvas,
                Optional.empty(),
                pictures.stream().map(PictureDrop.Taken::picture).toList(),
                Optional.empty(),
                "");
    }
}
