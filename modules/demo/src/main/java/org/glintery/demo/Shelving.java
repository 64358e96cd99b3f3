package org.glintery.demo;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.stash.Canvas;
import org.glintery.api.stash.Coverage;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.Money;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.time.About;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Picture;
import org.glintery.demo.drills.DrillGrid;

/** Kits, pieces and legends. */
final class Shelving {
    private static final double CLOTH_MARGIN_MM = 60;

    private final Seeded seeded;
    private final ChangeSet.Builder change;
    private final Places places;
    private final Map<String, UUID> kits = new HashMap<>();

    Shelving(Seeded seeded, ChangeSet.Builder change, Places places) {
        this.seeded = seeded;
        this.change = change;
        this.places = places;
    }

    void shelve(PieceInMaking piece, LocalDate arrived) {
        Optional<UUID> kit = piece.told().title().equals(Plot.OWN_PICTURE)
                ? Optional.empty()
                : Optional.of(kits.computeIfAbsent(
                        piece.told().kit().orElse(piece.told().title()), title -> kit(title, piece, arrived)));
        piece.picture().ifPresent(change::blob);
        change.create(Piece.TYPE, piece.id(), document(piece, kit, arrived));
        if (!piece.legend().isEmpty()) {
            change.create(Legend.TYPE, piece.id(), Legend.of(piece.legend()));
        }
    }

    private UUID kit(String title, PieceInMaking piece, LocalDate arrived) {
        Told told = piece.told();
        UUID id = seeded.id();
        piece.onTheBox().ifPresent(change::blob);
        boolean bought = told.standing() != Standing.HOPED_FOR;
        boolean came = bought && told.standing() != Standing.ORDERED;
        int cents = told.widthCm() * told.heightCm() + seeded.between(200, 900);
        change.create(
                Kit.TYPE,
                id,
                new Kit(
                        title,
                        Optional.of(piece.source()),
                        bought ? Optional.of(About.on(ordered(told, arrived))) : Optional.empty(),
                        came ? Optional.of(About.on(arrived)) : Optional.empty(),
                        bought ? Optional.of(new Money(BigDecimal.valueOf(cents, 2))) : Optional.empty(),
                        bought ? Optional.of(new Money(BigDecimal.valueOf(390, 2))) : Optional.empty(),
                        told.standing() == Standing.SHELVED ? Optional.of(places.someShelf(seeded)) : Optional.empty(),
                        piece.onTheBox()
                                .map(blob -> List.of(picture(blob, "The box")))
                                .orElse(List.of()),
                        ""));
        return id;
    }

    private LocalDate ordered(Told told, LocalDate arrived) {
        return told.standing() == Standing.ORDERED
                ? Calendar.TODAY.minusDays(seeded.between(3, 16))
                : arrived.minusDays(seeded.between(9, 24));
    }

    private Piece document(PieceInMaking piece, Optional<UUID> kit, LocalDate arrived) {
        Told told = piece.told();
        boolean painted = told.scene().isPresent();
        return new Piece(
                told.title(),
                kit,
                Optional.empty(),
                told.standing(),
                since(piece, arrived),
                painted ? Coverage.FULL : Coverage.NOT_SAID,
                painted ? Optional.of(told.shape()) : Optional.empty(),
                piece.grid().map(grid -> canvas(told, grid)).orElse(Canvas.NOT_SAID),
                told.sections() == 0 ? Optional.empty() : Optional.of(told.sections()),
                piece.picture()
                        .map(blob -> List.of(picture(blob, told.title())))
                        .orElse(List.of()),
                told.kit().isPresent() ? Optional.of(places.wall()) : Optional.empty(),
                Stories.of(told.title()));
    }

    private Optional<About> since(PieceInMaking piece, LocalDate arrived) {
        return switch (piece.told().standing()) {
            case MADE -> MadePieces.finishedOn(piece.made());
            case ON_THE_BENCH -> Optional.of(About.on(Evenings.firstOf(piece.told())));
            case RESTING -> Optional.of(About.on(Evenings.lastOf(piece.told())));
            case SHELVED -> Optional.of(About.on(arrived));
            case ORDERED, HOPED_FOR, LET_GO -> Optional.empty();
        };
    }

    private static Canvas canvas(Told told, DrillGrid grid) {
        return new Canvas(
                Optional.of(grid.columns() * told.pitchMm()),
                Optional.of(grid.rows() * told.pitchMm()),
                Optional.of(told.widthCm() * 10 + CLOTH_MARGIN_MM),
                Optional.of(told.heightCm() * 10 + CLOTH_MARGIN_MM),
                Optional.of(told.pitchMm()),
                Optional.of(grid.columns()),
                Optional.of(grid.rows()));
    }

    static Picture picture(Blob blob, String caption) {
        return new Picture(blob.hash(), blob.mediaType(), caption);
    }
}
