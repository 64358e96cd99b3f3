package org.glintery.charts.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.glintery.charts.design.DesignShop.ID;
import static org.glintery.charts.design.DesignShop.range;
import static org.glintery.charts.design.DesignShop.set;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.activework.ActiveWork;
import org.glintery.api.activework.Laid;
import org.glintery.api.activework.Sitting;
import org.glintery.api.charts.Design;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Shape;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Coverage;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.stash.Stash;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Settings;
import org.glintery.api.workshop.View;
import org.glintery.testkit.ShopInFolder;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a chart says to its piece: its legend, and what was laid. */
class DesignLegendTest {
    private static final UUID PIECE = new UUID(4, 4);
    private static final Drill C0 = Drill.of(Shape.SQUARE, 250, "own", "C0");
    private static final Drill OTHER = Drill.of(Shape.SQUARE, 250, "own", "Z9");

    @TempDir
    Path temp;

    private DesignShop shop;

    @BeforeEach
    void open() {
        shop = DesignShop.at(temp);
        shop.workshop()
                .apply(ChangeSet.named("Choose")
                        .put(Settings.TYPE, Settings.ID, new Settings(Settings.Depth.DRILLS_AS_WELL, "EUR", false))
                        .build())
                .orThrow();
        // C (line 2) is used nowhere
        shop.apply(shop.designs().keep(shop.view(), ID, DesignShop.of("Crane", 4, 3, 0, 0, 1, 1, 0, -1, 1, 1)));
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private Stash stash() {
        return shop.workshop().find(Stash.class).orElseThrow();
    }

    private ActiveWork bench() {
        return shop.workshop().find(ActiveWork.class).orElseThrow();
    }

    private View view() {
        return shop.view();
    }

    private void shelved(LegendLine... legend) {
        shop.apply(stash().addPiece(view(), PIECE, Piece.titled("Boatyard crane", Standing.SHELVED), List.of(legend)));
    }

    private static LegendLine line(String symbol, Drill drill, long needed, long supplied) {
        return new LegendLine(
                symbol, drill, Optional.of(needed), Amount.counted(supplied), Optional.empty(), Map.of("Page", "2"));
    }

    private void intoLegend() {
        shop.apply(shop.designs().intoLegend(view(), ID, PIECE));
    }

    @Test
    void needsWhatTheCellsCount_andKeepsWhatCameWithThePiece() {
        shelved(line("A", C0, 90, 100), line("B", OTHER, 40, 50));
        intoLegend();
        List<LegendLine> lines = Legend.of(view(), PIECE).lines();
        assertThat(lines).extracting(LegendLine::symbol).containsExactly("A", "B", "B'");
        assertThat(lines).extracting(l -> l.needed().orElseThrow()).containsExactly(3L, 4L, 0L);
        assertThat(lines.get(0).supplied()).isEqualTo(Amount.counted(100));
        assertThat(lines.get(0).extras()).containsEntry("Page", "2");
        assertThat(lines.get(1).supplied()).isEqualTo(Amount.unknown());
        assertThat(lines.get(2).drill()).isEqualTo(OTHER);
        assertThat(view().inTheHouse(C0)).isEqualTo(100);
        assertThat(view().inTheHouse(OTHER)).isEqualTo(50);
        assertThat(view().find(Design.TYPE, ID).orElseThrow().value().piece()).contains(PIECE);
    }

    @Test
    void tellsTheCanvasItsGrid_whereThePieceDoesNot() {
        shelved();
        intoLegend();
        Piece piece = view().find(Piece.TYPE, PIECE).orElseThrow().value();
        assertThat(piece.canvas().columns()).contains(4);
        assertThat(piece.canvas().drilledHeightMm()).contains(5.0);
        assertThat(piece.coverage()).isEqualTo(Coverage.PARTIAL);
        assertThat(piece.drillShape()).contains(Shape.SQUARE);
        assertThat(shop.workshop().undoable()).contains("Make Crane the legend of Boatyard crane");
        shop.workshop().undo().orThrow();
        assertThat(view().find(Piece.TYPE, PIECE).orElseThrow().value().canvas().columns())
                .isEmpty();
    }

    @Test
    void makesAPieceOfItsOwn() {
        shop.apply(shop.designs().intoPiece(view(), ID, PIECE));
        Piece piece = view().find(Piece.TYPE, PIECE).orElseThrow().value();
        assertThat(piece.title()).isEqualTo("Crane");
        assertThat(piece.standing()).isEqualTo(Standing.HOPED_FOR);
        assertThat(Legend.of(view(), PIECE).needed()).contains(7L);
    }

    @Test
    void offersWhatWasMarkedSinceTheLastSitting_whichThenBooksIt() {
        shelved(line("A", C0, 3, 10));
        intoLegend();
        assertThat(shop.designs().untold(view(), ID)).isEqualTo(Laid.NOT_SAID);

        shop.apply(shop.designs().mark(view(), ID, set(0, 1, 2), true));
        Laid first = shop.designs().untold(view(), ID);
        assertThat(first.bySymbol()).isEqualTo(Map.of("A", 2L, "B", 1L));
        sit(first);
        assertThat(shop.designs().untold(view(), ID)).isEqualTo(Laid.NOT_SAID);
        assertThat(bench().progress(view(), PIECE).laidDrills()).contains(3L);
        assertThat(view().balance(new Spot.OnCanvas(PIECE), C0).count()).isEqualTo(2);
        assertThat(stash().supplies(view(), PIECE).get(0).laid().count()).isEqualTo(2);

        shop.apply(shop.designs().mark(view(), ID, range(0, 8), true));
        assertThat(shop.designs().untold(view(), ID).bySymbol()).isEqualTo(Map.of("A", 1L, "B", 3L));
        shop.workshop().undo().orThrow();
        shop.workshop().undo().orThrow();
        assertThat(shop.designs().untold(view(), ID))
                .as("once the sitting was taken back")
                .isEqualTo(first);
    }

    @Test
    void offersABareNumber_whereSittingsToldNoSymbols() {
        shelved();
        intoLegend();
        sit(Laid.drills(2));
        shop.apply(shop.designs().mark(view(), ID, range(0, 4), true));
        assertThat(shop.designs().untold(view(), ID)).isEqualTo(Laid.drills(2));
    }

    private void sit(Laid laid) {
        shop.apply(bench().sit(
                        view(),
                        UUID.randomUUID(),
                        new Sitting(
                                PIECE,
                                About.on(LocalDate.of(2025, 5, 2)),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.of(40),
                                0,
                                laid,
                                Optional.empty(),
                                "")));
    }

    @Test
    void saysSo_whileKitsAndPiecesAreSwitchedOff() {
        shelved();
        KeptDesigns alone = new KeptDesigns(Optional.empty(), Optional.empty());
        assertThat(ShopInFolder.refusal(alone.intoLegend(view(), ID, PIECE)).code())
                .isEqualTo("no-stash");
        assertThat(alone.untold(view(), ID)).isEqualTo(Laid.NOT_SAID);
        shop.apply(alone.mark(view(), ID, set(0), true));
        assertThat(shop.cells().isLaid(0)).isTrue();
    }
}
