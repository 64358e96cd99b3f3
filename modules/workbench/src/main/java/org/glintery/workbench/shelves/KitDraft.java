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
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.NewKit;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.stash.Stash;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.View;
import org.glintery.workbench.parts.PictureDrop;

/**
 * What a form says of a new kit with one piece, or of a piece without a kit. Pure.
 *
 * @param origin where it comes from
 * @param legend in printed order; empty when there is none yet
 */
record KitDraft(
        String title,
        Origin origin,
        Optional<String> source,
        Standing standing,
        Optional<Shape> shape,
        Coverage coverage,
        Canvas canvas,
        List<PictureDrop.Taken> pictures,
        List<LegendLine> legend,
        Map<String, CardEntry> entries) {

    Result<ChangeSet> change(View view, Stash stash, UUID pieceId, Clock clock) {
        if (origin instanceof Origin.NewKit) {
            return newKit(view, stash, pieceId, clock);
        }
        Optional<UUID> kit = origin instanceof Origin.OfKit of ? Optional.of(of.kit()) : Optional.empty();
        ChangeSet.Builder bytes = ChangeSet.named("");
        pictures.forEach(picture -> bytes.blob(picture.blob()));
        return stash.addPiece(view, pieceId, piece(kit, clock), legend)
                .then(change -> Result.ok(bytes.isEmpty() ? change : change.join(bytes.build())));
    }

    private Result<ChangeSet> newKit(View view, Stash stash, UUID pieceId, Clock clock) {
        UUID kitId = UUID.randomUUID();
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
                        List.of(new NewKit.NewPiece(pieceId, piece(Optional.of(kitId), clock), Legend.of(legend))),
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
