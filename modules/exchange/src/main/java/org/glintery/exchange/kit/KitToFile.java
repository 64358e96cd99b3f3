package org.glintery.exchange.kit;

import java.util.ArrayList;
import java.util.Base64;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.stash.Canvas;
import org.glintery.api.stash.CardEntry;
import org.glintery.api.stash.ColourCard;
import org.glintery.api.stash.Coverage;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.Money;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.workshop.Picture;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.glintery.api.workshop.Workshop;
import org.glintery.exchange.picture.PicturePrivacy;
import org.openide.util.NbBundle.Messages;

/**
 * Tells a kit for a file that may go to others: without this workshop's ids and keeping places, and with pictures that
 * say nothing of where and how they were taken. Used once.
 */
@Messages({
    "# {0} - how many",
    "# {1} - the same in figures",
    "KitToFile.picturesLeftOut={0,choice,1#One picture was|1<{1} pictures were} left out: nobody can be sure that nothing of the place is in {0,choice,1#it|1<them}. Save them as JPEG or PNG to have them in the file."
})
final class KitToFile {
    private final View view;
    private final Workshop workshop;
    private int leftOut;

    KitToFile(View view, Workshop workshop) {
        this.view = view;
        this.workshop = workshop;
    }

    KitInFile tell(UUID id, Kit kit) {
        List<PieceInFile> pieces = view.all(Piece.TYPE).stream()
                .filter(piece -> piece.value().kit().equals(Optional.of(id)))
                .map(this::piece)
                .toList();
        return new KitInFile(
                KitInFile.FORMAT,
                KitInFile.VERSION,
                kit.title(),
                kit.source(),
                kit.orderedOn(),
                kit.arrivedOn(),
                kit.price().map(Money::amount),
                kit.postage().map(Money::amount),
                present(kit.notes()),
                pictures(kit.pictures()),
                pieces);
    }

    /** What the maker should know of what was written. */
    List<String> warnings() {
        return leftOut == 0 ? List.of() : List.of(Bundle.KitToFile_picturesLeftOut(leftOut, Balance.grouped(leftOut)));
    }

    private PieceInFile piece(Stored<Piece> stored) {
        Piece piece = stored.value();
        Legend legend = Legend.of(view, stored.id());
        return new PieceInFile(
                piece.title(),
                Optional.of(piece.standing()).filter(standing -> standing != Standing.SHELVED),
                piece.standingSince(),
                Optional.of(piece.coverage()).filter(coverage -> coverage != Coverage.NOT_SAID),
                piece.drillShape(),
                Optional.of(piece.canvas()).filter(canvas -> !canvas.equals(Canvas.NOT_SAID)),
                piece.sections(),
                present(piece.story()),
                pictures(piece.pictures()),
                legend(legend),
                legend.photo().flatMap(this::picture));
    }

    /** What is known of a code stands on the first of its lines. */
    private Optional<List<LineInFile>> legend(Legend legend) {
        Set<String> told = new HashSet<>();
        List<LineInFile> lines = new ArrayList<>();
        for (LegendLine line : legend.lines()) {
            Drill drill = line.drill();
            boolean first = told.add(drill.card() + "\n" + drill.code());
            CardEntry known = ColourCard.entry(view, drill.card(), drill.code()).orElse(CardEntry.UNKNOWN);
            lines.add(LineInFile.of(line, first ? known : CardEntry.UNKNOWN));
        }
        return Optional.of(lines).filter(all -> !all.isEmpty());
    }

    private Optional<List<PictureInFile>> pictures(List<Picture> pictures) {
        List<PictureInFile> told =
                pictures.stream().flatMap(picture -> picture(picture).stream()).toList();
        return Optional.of(told).filter(all -> !all.isEmpty());
    }

    private Optional<PictureInFile> picture(Picture picture) {
        Optional<byte[]> bytes = workshop.blob(picture.hash()).flatMap(PicturePrivacy::without);
        if (bytes.isEmpty()) {
            leftOut++;
        }
        return bytes.map(clean -> new PictureInFile(
                Optional.of(Base64.getEncoder().encodeToString(clean)), Optional.empty(), present(picture.caption())));
    }

    private static Optional<String> present(String text) {
        return Optional.of(text).filter(t -> !t.isEmpty());
    }
}
