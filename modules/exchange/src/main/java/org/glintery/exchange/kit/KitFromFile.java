package org.glintery.exchange.kit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.Canvas;
import org.glintery.api.stash.CardEntry;
import org.glintery.api.stash.Coverage;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.Money;
import org.glintery.api.stash.NewKit;
import org.glintery.api.stash.NewKit.NewPiece;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.workshop.Picture;

/** Makes a new kit from what a file tells. Every reading gives new ids: the same kit can be bought twice. Used once. */
final class KitFromFile {
    private final KitInFile told;
    private final PicturesOfKit pictures;
    private final UUID id = UUID.randomUUID();
    private final Map<String, Map<String, CardEntry>> cards = new LinkedHashMap<>();

    KitFromFile(KitInFile told, PicturesOfKit pictures) {
        this.told = told;
        this.pictures = pictures;
    }

    NewKit kit() throws NotAKitException {
        Kit kit = new Kit(
                told.title(),
                told.source(),
                told.orderedOn(),
                told.arrivedOn(),
                told.price().map(Money::new),
                told.postage().map(Money::new),
                Optional.empty(),
                pictures.take(told.pictures().orElse(List.of())),
                told.notes().orElse(""));
        List<NewPiece> pieces = new ArrayList<>();
        for (PieceInFile piece : told.pieces()) {
            pieces.add(new NewPiece(UUID.randomUUID(), piece(piece), new Legend(lines(piece), photo(piece))));
        }
        return new NewKit(id, kit, List.copyOf(pieces), cards, pictures.blobs());
    }

    private Piece piece(PieceInFile piece) throws NotAKitException {
        return new Piece(
                piece.title(),
                Optional.of(id),
                Optional.empty(),
                piece.standing().orElse(Standing.SHELVED),
                piece.standingSince(),
                piece.coverage().orElse(Coverage.NOT_SAID),
                piece.shape(),
                piece.canvas().orElse(Canvas.NOT_SAID),
                piece.sections(),
                pictures.take(piece.pictures().orElse(List.of())),
                Optional.empty(),
                piece.story().orElse(""));
    }

    private Optional<Picture> photo(PieceInFile piece) throws NotAKitException {
        return pictures.take(piece.legendPhoto().stream().toList()).stream().findFirst();
    }

    private List<LegendLine> lines(PieceInFile piece) {
        List<LegendLine> lines = new ArrayList<>();
        for (LineInFile line : piece.legend().orElse(List.of())) {
            lines.add(line.line(piece.shape().orElse(Shape.SQUARE)));
            if (!line.entry().equals(CardEntry.UNKNOWN)) {
                cards.computeIfAbsent(line.cardOrOwn(), card -> new LinkedHashMap<>())
                        .putIfAbsent(line.code(), line.entry());
            }
        }
        return List.copyOf(lines);
    }
}
