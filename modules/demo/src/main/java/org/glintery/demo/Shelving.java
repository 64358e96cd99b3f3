package org.glintery.demo;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.Canvas;
import org.glintery.api.stash.Coverage;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.Money;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.storage.KeepingPlace;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Picture;

/** Kits, pieces and legends, and the places they are kept. */
final class Shelving {
    private static final List<String> SOURCES = List.of("Quay Street Crafts", "Club table", "Post from the mainland");
    private static final List<String> PLACES =
            List.of("Tall shelf, upper board", "Tall shelf, lower board", "Chest of rolled canvases", "Wall by the stairs");

    private final Seeded seeded;
    private final ChangeSet.Builder change;
    private final List<UUID> places;

    Shelving(Seeded seeded, ChangeSet.Builder change) {
        this.seeded = seeded;
        this.change = change;
        this.places = PLACES.stream().map(name -> seeded.id()).toList();
    }

    void places() {
        for (int i = 0; i < PLACES.size(); i++) {
            change.create(KeepingPlace.TYPE, places.get(i), new KeepingPlace(PLACES.get(i), Optional.empty(), ""));
        }
    }

    UUID wall() {
        return places.get(3);
    }

    void shelve(PieceInMaking piece, Course course) {
        Told told = piece.told();
        boolean ownPicture = told.title().contains("own photo");
        UUID kit = seeded.id();
        LocalDate arrived = course.arrived();
        boolean bought = told.standing() != Standing.HOPED_FOR;
        if (!ownPicture) {
            String source = sourceOf(told);
            int cents = told.widthCm() * told.heightCm() + seeded.between(200, 900);
            change.create(
                    Kit.TYPE,
                    kit,
                    new Kit(
                            told.title(),
                            Optional.of(source),
                            bought ? Optional.of(About.on(arrived.minusDays(seeded.between(9, 24)))) : Optional.empty(),
                            bought && told.standing() != Standing.ORDERED
                                    ? Optional.of(About.on(arrived))
                                    : Optional.empty(),
                            bought ? Optional.of(new Money(BigDecimal.valueOf(cents, 2))) : Optional.empty(),
                            bought ? Optional.of(new Money(BigDecimal.valueOf(390, 2))) : Optional.empty(),
                            told.standing() == Standing.SHELVED
                                    ? Optional.of(places.get(seeded.between(0, 2)))
                                    : Optional.empty(),
                            List.of(),
                            ""));
        }
        change.create(
                Piece.TYPE, piece.id(), document(piece, ownPicture ? Optional.empty() : Optional.of(kit), course));
        if (!piece.legend().isEmpty()) {
            change.create(Legend.TYPE, piece.id(), new Legend(piece.legend()));
        }
    }

    private Piece document(PieceInMaking piece, Optional<UUID> kit, Course course) {
        Told told = piece.told();
        List<Picture> pictures = piece.pictures().stream()
                .map(blob -> new Picture(blob.hash(), blob.mediaType(), told.title()))
                .toList();
        boolean made = told.standing() == Standing.MADE;
        return new Piece(
                told.title(),
                kit,
                Optional.empty(),
                told.standing(),
                Optional.of(About.on(standingSince(told, course))),
                told.scene().isEmpty() ? Coverage.NOT_SAID : Coverage.FULL,
                told.scene().isEmpty() ? Optional.empty() : Optional.of(told.shape()),
                told.scene().isEmpty() ? Canvas.NOT_SAID : canvas(piece),
                told.sections() == 0 ? Optional.empty() : Optional.of(told.sections()),
                pictures,
                made && piece.made() % 3 == 0 ? Optional.of(wall()) : Optional.empty(),
                Stories.of(told.title()));
    }

    private static Canvas canvas(PieceInMaking piece) {
        Told told = piece.told();
        DrillGrid grid = piece.grid().orElseThrow();
        double pitch = told.shape() == Shape.ROUND ? 2.8 : 2.5;
        return new Canvas(
                Optional.of(grid.columns() * pitch),
                Optional.of(grid.rows() * pitch),
                Optional.of(told.widthCm() * 10.0 + 60),
                Optional.of(told.heightCm() * 10.0 + 60),
                Optional.of(pitch),
                Optional.of(grid.columns()),
                Optional.of(grid.rows()));
    }

    private static LocalDate standingSince(Told told, Course course) {
        return switch (told.standing()) {
            case MADE, RESTING -> course.last();
            case ON_THE_BENCH -> course.started();
            default -> course.arrived();
        };
    }

    /** Where the kit was bought; the same for a title every time. */
    static String sourceOf(Told told) {
        return SOURCES.get(Math.floorMod(told.title().hashCode(), SOURCES.size()));
    }
}
