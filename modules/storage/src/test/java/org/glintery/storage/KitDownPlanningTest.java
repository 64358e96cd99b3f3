package org.glintery.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.glintery.storage.WorkshopInFolder.MAY;
import static org.glintery.storage.WorkshopInFolder.drill;
import static org.glintery.storage.WorkshopInFolder.refusal;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.activework.Completion;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Spot;
import org.glintery.api.storage.Bag;
import org.glintery.api.storage.KitUp;
import org.glintery.api.workshop.Stored;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KitDownPlanningTest {

    private WorkshopInFolder shop;
    private UUID holder;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = WorkshopInFolder.at(folder);
        holder = shop.holder("Case A", 3, Optional.empty());
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private UUID madePiece(long... counts) {
        UUID piece = shop.piece("Rope-walk", counts);
        shop.kitUp(piece, holder);
        shop.make(piece);
        return piece;
    }

    @Test
    void fillsARepairPacketAndOneBagAColour_andFreesTheHolder() {
        UUID piece = madePiece(200, 100);
        shop.kitDown(piece, 10);

        assertThat(shop.view().contents(shop.bagNamed("Repair packet of Rope-walk")))
                .isEqualTo(Map.of(drill(1), new Balance(10, 0, 0), drill(2), new Balance(10, 0, 0)));
        assertThat(shop.count(shop.bagNamed("own T1"), drill(1))).isEqualTo(190);
        assertThat(shop.count(shop.bagNamed("own T2"), drill(2))).isEqualTo(90);
        assertThat(shop.storage().freeHolders(shop.view()))
                .extracting(Stored::id)
                .containsExactly(holder);
        assertThat(KitUp.of(shop.view(), piece)).isEmpty();
    }

    @Test
    void marksThePacketAsThePieces() {
        UUID piece = madePiece(200);
        shop.kitDown(piece, 10);

        Bag packet = shop.view()
                .find(Bag.TYPE, ((Spot.InBag) shop.bagNamed("Repair packet of Rope-walk")).bag())
                .orElseThrow()
                .value();
        assertThat(packet.repairFor()).contains(piece);
    }

    @Test
    void addsToTheBagThatTheColourAlreadyHas() {
        Spot home = shop.bag("greys, drawer 2");
        shop.move(drill(1), Spot.SUPPLIER, home, 5);
        shop.kitDown(madePiece(200), 0);

        assertThat(shop.count(home, drill(1))).isEqualTo(205);
        assertThat(shop.view().all(Bag.TYPE))
                .extracting(bag -> bag.value().name())
                .doesNotContain("own T1");
    }

    @Test
    void gathersAlsoWhatStayedInTheKitsBag() {
        UUID piece = shop.piece("Rope-walk", 200);
        shop.kitUp(piece, holder);
        shop.move(drill(1), Spot.SUPPLIER, shop.bagNamed("Rope-walk"), 30);
        shop.make(piece);
        shop.kitDown(piece, 0);

        assertThat(shop.view().whereabouts(drill(1)).keySet())
                .containsExactlyInAnyOrder(Spot.SUPPLIER, shop.bagNamed("own T1"));
        assertThat(shop.count(shop.bagNamed("own T1"), drill(1))).isEqualTo(230);
    }

    @Test
    void saysThatNoRepairPacketCanBeCounted_outOfWhatNobodyCounted() {
        UUID piece = shop.piece("Rope-walk", Amount.unknown());
        shop.kitUp(piece, holder);
        shop.make(piece);

        assertThat(shop.kitDown(piece, 10))
                .containsExactly(
                        "Of drills that nobody has counted none go into the repair packet: put a few aside by hand.");
    }

    @Test
    void leavesStockOfTheSameDrillWhereItIs_andSaysSo() {
        UUID piece = madePiece(200);
        shop.move(drill(1), Spot.SUPPLIER, shop.pocket(holder, 2), 70);

        assertThat(shop.kitDown(piece, 0)).containsExactly("Other drills stay in the holder.");
        assertThat(shop.count(shop.pocket(holder, 2), drill(1))).isEqualTo(70);
        assertThat(shop.count(shop.bagNamed("own T1"), drill(1))).isEqualTo(200);
    }

    @Test
    void takesNothingOfAnotherPieceInTheSameHolder() {
        UUID piece = shop.piece("Rope-walk", 200);
        shop.kitUp(piece, holder);
        UUID other = shop.piece("Net loft", 100);
        shop.kitUp(other, holder);
        Spot moved = shop.pocket(holder, 2);
        shop.move(drill(1), shop.pocket(holder, 1), moved, 100);
        shop.make(piece);
        shop.kitDown(piece, 0);

        assertThat(shop.count(moved, drill(1))).isEqualTo(100);
        assertThat(shop.count(shop.bagNamed("own T1"), drill(1))).isEqualTo(200);
    }

    @Test
    void leavesTheRestOfALooseBagInIt() {
        Spot loose = shop.bag("greys, drawer 2");
        shop.move(drill(1), Spot.SUPPLIER, loose, 500);
        shop.move(drill(9), Spot.SUPPLIER, loose, 500);
        UUID piece = shop.piece("Rope-walk", 200);
        UUID small = shop.holder("Case B", 1, Optional.of(10L));
        shop.move(drill(1), shop.bagNamed("Rope-walk"), Spot.LOST, 200);
        shop.kitUp(piece, small);
        shop.make(piece);
        shop.kitDown(piece, 10);

        assertThat(shop.count(loose, drill(1))).isEqualTo(490);
        assertThat(shop.count(shop.bagNamed("Repair packet of Rope-walk"), drill(1)))
                .isEqualTo(10);
    }

    @Test
    void clearsTheBagOfAMadePieceThatSatInNoHolder() {
        UUID piece = shop.piece("Rope-walk", 200);
        shop.make(piece);
        shop.apply(shop.storage()
                .planLeftovers(shop.view(), piece, 10, Optional.empty())
                .then(plan -> Result.ok(plan.change())));

        assertThat(refusal(shop.storage().planLeftovers(shop.view(), piece, 10, Optional.empty()))
                        .code())
                .isEqualTo("not-kitted-up");
        assertThat(shop.view().contents(shop.bagNamed("Rope-walk"))).isEmpty();
        assertThat(shop.count(shop.bagNamed("Repair packet of Rope-walk"), drill(1)))
                .isEqualTo(10);
        assertThat(shop.count(shop.bagNamed("own T1"), drill(1))).isEqualTo(190);
    }

    @Test
    void leavesNothingUnsureBehind_whenAmountsWereRough() {
        UUID piece = shop.piece("Rope-walk", Amount.rough(200, 10));
        shop.kitUp(piece, holder);
        shop.make(piece);
        shop.move(drill(1), shop.pocket(holder, 0), new Spot.OnCanvas(piece), 200);
        shop.kitDown(piece, 10);

        assertThat(shop.view().contents(shop.pocket(holder, 0))).isEmpty();
        assertThat(shop.storage().freeHolders(shop.view())).hasSize(1);
    }

    @Test
    void bagsWhatWasNeverCounted() {
        UUID piece = shop.piece("Rope-walk", Amount.unknown());
        shop.kitUp(piece, holder);
        shop.make(piece);
        shop.kitDown(piece, 10);

        assertThat(shop.view().balance(shop.bagNamed("own T1"), drill(1)).uncounted())
                .isEqualTo(1);
        assertThat(shop.view().all(Bag.TYPE))
                .extracting(bag -> bag.value().name())
                .doesNotContain("Repair packet of Rope-walk");
    }

    @Test
    void putsDrillsBackIntoTheKitsBag_whenThePieceIsNotMadeYet() {
        UUID piece = shop.piece("Rope-walk", 200);
        shop.kitUp(piece, holder);
        List<String> warnings = shop.kitDown(piece, 10);

        assertThat(warnings)
                .containsExactly("Rope-walk is not made yet, so its drills go back into the bag of its kit.");
        assertThat(shop.count(shop.bagNamed("Rope-walk"), drill(1))).isEqualTo(200);
        assertThat(shop.view().reserved(drill(1))).isEqualTo(200);
    }

    @Test
    void leavesOtherDrillsInTheHolder_andSaysSo() {
        UUID piece = madePiece(200);
        shop.move(drill(9), Spot.SUPPLIER, shop.pocket(holder, 2), 5);

        assertThat(shop.kitDown(piece, 0)).containsExactly("Other drills stay in the holder.");
        assertThat(shop.count(shop.pocket(holder, 2), drill(9))).isEqualTo(5);
    }

    @Test
    void isUndoneWhole() {
        UUID piece = madePiece(200, 100);
        String before = shop.view().contentDigest();
        shop.kitDown(piece, 10);
        shop.workshop().undo().orThrow();

        assertThat(shop.view().contentDigest()).isEqualTo(before);
    }

    @Test
    void marksTheHolderToBeCleared_whenThePieceIsCompleted() {
        UUID piece = shop.piece("Rope-walk", 200);
        shop.kitUp(piece, holder);
        shop.apply(shop.storage().completing(shop.view(), new Completion(piece, MAY, Optional.empty(), "")));

        assertThat(KitUp.of(shop.view(), piece).orElseThrow().toClear()).isTrue();
    }

    @Test
    void hasNoPart_whenAPieceInNoHolderIsCompleted() {
        UUID piece = shop.piece("Rope-walk", 200);

        assertThat(shop.storage()
                        .completing(shop.view(), new Completion(piece, MAY, Optional.empty(), ""))
                        .orThrow()
                        .operations())
                .isEmpty();
    }

    @Test
    void refusesAPieceInNoHolder() {
        UUID piece = shop.piece("Rope-walk", 200);

        assertThat(refusal(shop.storage().planKitDown(shop.view(), piece, 10, Optional.empty()))
                        .code())
                .isEqualTo("not-kitted-up");
    }
}
