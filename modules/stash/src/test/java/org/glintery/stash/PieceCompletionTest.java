package org.glintery.stash;

import static org.assertj.core.api.Assertions.assertThat;
import static org.glintery.stash.WorkshopInFolder.MAY;
import static org.glintery.stash.WorkshopInFolder.T1;
import static org.glintery.stash.WorkshopInFolder.T2;
import static org.glintery.stash.WorkshopInFolder.line;
import static org.glintery.stash.WorkshopInFolder.refusal;
import static org.glintery.stash.WorkshopInFolder.silent;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.activework.Completion;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.storage.Bag;
import org.glintery.api.storage.Holder;
import org.glintery.api.storage.KitUp;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.LedgerQuery;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PieceCompletionTest {

    private WorkshopInFolder shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = WorkshopInFolder.at(folder);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private Result<ChangeSet> completing(UUID piece) {
        return shop.stash().completing(shop.view(), new Completion(piece, MAY, Optional.empty(), ""));
    }

    private Spot kitUp(UUID piece, Drill drill, long count) {
        UUID id = UUID.randomUUID();
        Holder holder = Holder.grid("Case A", 1, 1, Optional.empty());
        Spot pocket = new Spot.InPocket(id, holder.pockets().get(0).id());
        KitUp kitUp = new KitUp(id, List.of(new KitUp.Seat("A", drill, pocket)), Optional.empty(), false);
        shop.apply(Result.ok(ChangeSet.named("Kit up")
                .create(Holder.TYPE, id, holder)
                .create(KitUp.TYPE, piece, kitUp)
                .build()));
        Spot bag = shop.bagNamed("Rope-walk");
        shop.apply(shop.stash().move(shop.view(), DrillMovesTest.request(drill, bag, pocket, count, false)));
        return pocket;
    }

    @Test
    void raisesNoDoubt_whereNobodySaidHowManyCame() {
        LegendLine uncounted = new LegendLine("A", T1, Optional.of(120L), Amount.unknown(), Optional.empty(), Map.of());
        UUID unsaid = shop.shelve("Rope-walk", uncounted);
        UUID said = shop.shelve("Net loft", WorkshopInFolder.line("A", WorkshopInFolder.T2, 120, 100));
        shop.apply(completing(unsaid));
        shop.apply(completing(said));

        assertThat(FoundPlaces.at(shop.view(), new Spot.OnCanvas(unsaid), T1)).isEqualTo(120);
        assertThat(FoundPlaces.all(shop.view()))
                .extracting(found -> found.value().at())
                .containsExactly(new Spot.OnCanvas(said));
    }

    @Test
    void makesThePiece_withTheDate() {
        UUID piece = shop.shelve("Rope-walk");
        shop.apply(completing(piece));

        Piece made = shop.view().find(Piece.TYPE, piece).orElseThrow().value();
        assertThat(made.standing()).isEqualTo(Standing.MADE);
        assertThat(made.standingSince()).contains(MAY);
    }

    @Test
    void laysTheRemainder_fromPocketThenBagThenOthersThenFound() {
        UUID piece = shop.shelve("Rope-walk", line("A", T1, 500, 200));
        Spot pocket = kitUp(piece, T1, 150);
        Spot other = shop.bag("leftovers", T1, 100);
        shop.apply(completing(piece));

        assertThat(shop.view().balance(new Spot.OnCanvas(piece), T1)).isEqualTo(new Balance(500, 0, 0));
        assertThat(shop.count(pocket, T1)).isZero();
        assertThat(shop.count(shop.bagNamed("Rope-walk"), T1)).isZero();
        assertThat(shop.count(other, T1)).isZero();
        List<String> ontoCanvas = new ArrayList<>();
        shop.workshop().ledger(LedgerQuery.all(), entry -> {
            if (entry.to().equals(new Spot.OnCanvas(piece))) {
                ontoCanvas.add(entry.count() + " " + entry.action().reason());
            }
        });
        assertThat(ontoCanvas)
                .containsExactly(
                        "150 laid on Rope-walk",
                        "50 laid on Rope-walk",
                        "100 laid on Rope-walk",
                        "200 found: Rope-walk took more than was booked");
    }

    @Test
    void takesOnlyWhatIsStillMissing_whenSomeWasLaidBefore() {
        UUID piece = shop.shelve("Rope-walk", line("A", T1, 180, 200));
        Spot bag = shop.bagNamed("Rope-walk");
        shop.apply(
                shop.stash().move(shop.view(), DrillMovesTest.request(T1, bag, new Spot.OnCanvas(piece), 100, false)));
        shop.apply(completing(piece));

        assertThat(shop.count(new Spot.OnCanvas(piece), T1)).isEqualTo(180);
        assertThat(shop.count(bag, T1)).isEqualTo(20);
    }

    @Test
    void freesWhatIsLeft_forOthers() {
        UUID piece = shop.shelve("Rope-walk", line("A", T1, 180, 200));
        shop.apply(completing(piece));

        assertThat(shop.view().reserved(T1)).isZero();
        assertThat(shop.view().available(T1)).isEqualTo(20);
    }

    @Test
    void leavesAloneWhatIsSetAsideForAnotherPiece() {
        UUID piece = shop.shelve("Rope-walk", line("A", T1, 300, 200));
        shop.shelve("Net loft", line("A", T1, 100, 100));
        shop.apply(completing(piece));

        assertThat(shop.count(shop.bagNamed("Net loft"), T1)).isEqualTo(100);
        assertThat(shop.count(new Spot.OnCanvas(piece), T1)).isEqualTo(300);
    }

    // bags are sorted by their ids: of twelve kits some come before the loose bag
    @Test
    void takesLooseBags_andNeverTheBagOfAnotherKit() {
        Spot loose = shop.bag("leftovers", T1, 100);
        for (int i = 0; i < 12; i++) {
            shop.shelve("Net loft " + i, line("A", T1, 100, 100));
        }
        UUID piece = shop.shelve("Rope-walk", line("A", T1, 350, 200));
        shop.apply(completing(piece));

        assertThat(shop.count(loose, T1)).isZero();
        for (int i = 0; i < 12; i++) {
            assertThat(shop.count(shop.bagNamed("Net loft " + i), T1)).isEqualTo(100);
        }
        assertThat(shop.count(new Spot.OnCanvas(piece), T1)).isEqualTo(350);
        assertThat(shop.view().balance(Spot.FOUND, T1).count()).isEqualTo(-50);
    }

    @Test
    void takesWhatWasSetAsideForIt_alsoWhenTheHouseIsShort() {
        UUID piece = shop.shelve("Rope-walk", line("A", T1, 100, 100));
        shop.shelve("Net loft", line("A", T1, 100, 100));
        shop.apply(shop.stash()
                .move(shop.view(), DrillMovesTest.request(T1, shop.bagNamed("Net loft"), Spot.LOST, 100, false)));
        shop.apply(completing(piece));

        assertThat(shop.count(new Spot.OnCanvas(piece), T1)).isEqualTo(100);
        assertThat(shop.count(shop.bagNamed("Rope-walk"), T1)).isZero();
        assertThat(shop.view().balance(Spot.FOUND, T1).count()).isZero();
    }

    @Test
    void leavesRepairPacketsAlone_andDoesNotCountThemAsAtHand() {
        UUID piece = shop.shelve("Rope-walk", line("A", T1, 300, 200));
        UUID packet = UUID.randomUUID();
        Bag bag = new Bag("Repair packet of Crane", Optional.empty(), Optional.empty(), Optional.of(UUID.randomUUID()));
        shop.apply(Result.ok(
                ChangeSet.named("Keep some").create(Bag.TYPE, packet, bag).build()));
        Spot spot = new Spot.InBag(packet);
        shop.apply(shop.stash().move(shop.view(), DrillMovesTest.request(T1, Spot.SUPPLIER, spot, 20, false)));
        assertThat(shop.stash()
                        .supplies(shop.view(), piece)
                        .get(0)
                        .missing()
                        .orElseThrow()
                        .count())
                .isEqualTo(100);

        shop.apply(completing(piece));
        assertThat(shop.count(spot, T1)).isEqualTo(20);
    }

    @Test
    void addsTheLinesUp_whenTwoShareADrill() {
        UUID piece = shop.shelve("Rope-walk", line("A", T1, 50, 100), line("B", T1, 60, 100));
        shop.apply(completing(piece));

        assertThat(shop.count(new Spot.OnCanvas(piece), T1)).isEqualTo(110);
    }

    @Test
    void booksNothing_whenTheNeedIsNotKnown() {
        UUID piece = shop.shelve("Rope-walk", silent("A", T2));
        shop.apply(completing(piece));

        assertThat(shop.view().contents(new Spot.OnCanvas(piece))).isEmpty();
        assertThat(shop.view().balance(shop.bagNamed("Rope-walk"), T2).uncounted())
                .isEqualTo(1);
    }

    @Test
    void refusesToCompleteTwice() {
        UUID piece = shop.shelve("Rope-walk");
        shop.apply(completing(piece));

        assertThat(refusal(completing(piece)).code()).isEqualTo("already-made");
    }
}
