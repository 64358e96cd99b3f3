package org.glintery.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.glintery.storage.WorkshopInFolder.drill;
import static org.glintery.storage.WorkshopInFolder.refusal;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.LedgerAction.Movement;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.storage.KitUp;
import org.glintery.api.storage.Storage.KitUpPlan;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Settings;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KitUpPlanningTest {

    private WorkshopInFolder shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = WorkshopInFolder.at(folder);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private KitUpPlan plan(UUID piece, UUID holder) {
        return shop.storage()
                .planKitUp(shop.view(), piece, holder, Optional.empty())
                .orThrow();
    }

    @Test
    void putsSymbolsInOrder_onePocketEach() {
        UUID piece = shop.piece("Rope-walk", 200, 100);
        UUID holder = shop.holder("Case A", 4, Optional.of(500L));
        shop.kitUp(piece, holder);

        assertThat(KitUp.of(shop.view(), piece).orElseThrow().seats())
                .containsExactly(
                        new KitUp.Seat("A", drill(1), shop.pocket(holder, 0)),
                        new KitUp.Seat("B", drill(2), shop.pocket(holder, 1)));
        assertThat(shop.count(shop.pocket(holder, 0), drill(1))).isEqualTo(200);
        assertThat(shop.view().contents(shop.bagNamed("Rope-walk"))).isEmpty();
    }

    @Test
    void splitsADrill_onlyWhereThePocketIsTooSmall() {
        UUID piece = shop.piece("Rope-walk", 250, 40);
        UUID holder = shop.holder("Case A", 4, Optional.of(100L));
        KitUpPlan plan = plan(piece, holder);
        shop.apply(Result.ok(plan.change()));

        assertThat(plan.pockets()).isEqualTo(4);
        assertThat(shop.count(shop.pocket(holder, 0), drill(1))).isEqualTo(100);
        assertThat(shop.count(shop.pocket(holder, 2), drill(1))).isEqualTo(50);
        assertThat(shop.count(shop.pocket(holder, 3), drill(2))).isEqualTo(40);
    }

    @Test
    void leavesInItsBagWhatFindsNoRoom_andSaysWhich() {
        UUID piece = shop.piece("Rope-walk", 250, 40);
        UUID holder = shop.holder("Case A", 2, Optional.of(100L));
        List<String> warnings = shop.kitUp(piece, holder);

        assertThat(warnings).containsExactly("Case A has no room for all of it. In bags: A.");
        assertThat(KitUp.of(shop.view(), piece).orElseThrow().seats())
                .containsExactly(
                        new KitUp.Seat("A", drill(1), shop.bagNamed("Rope-walk")),
                        new KitUp.Seat("B", drill(2), shop.pocket(holder, 0)));
        assertThat(shop.count(shop.bagNamed("Rope-walk"), drill(1))).isEqualTo(250);
        assertThat(shop.count(shop.pocket(holder, 0), drill(2))).isEqualTo(40);
    }

    @Test
    void carriesTheUncertaintyAlong_andLeavesNoneBehind() {
        UUID piece = shop.piece("Rope-walk", Amount.rough(400, 20));
        UUID holder = shop.holder("Case A", 1, Optional.empty());
        shop.kitUp(piece, holder);

        assertThat(shop.view().balance(shop.pocket(holder, 0), drill(1))).isEqualTo(new Balance(400, 400, 0));
        assertThat(shop.view().contents(shop.bagNamed("Rope-walk"))).isEmpty();
    }

    @Test
    void movesDrillsNobodyCounted_asTheyAre() {
        UUID piece = shop.piece("Rope-walk", Amount.unknown());
        UUID holder = shop.holder("Case A", 1, Optional.of(100L));
        shop.kitUp(piece, holder);

        assertThat(shop.view().balance(shop.pocket(holder, 0), drill(1))).isEqualTo(new Balance(0, 0, 1));
    }

    @Test
    void fetchesWhatIsMissing_fromLeftoversThatAreFree() {
        UUID piece = shop.piece("Rope-walk", 100);
        LegendLine line = Legend.of(shop.view(), piece).lines().get(0);
        LegendLine asksMore = new LegendLine(
                line.symbol(), line.drill(), Optional.of(130L), line.supplied(), Optional.empty(), line.extras());
        shop.apply(Result.ok(ChangeSet.named("Ask more")
                .put(Legend.TYPE, piece, Legend.of(List.of(asksMore)))
                .build()));
        Spot leftovers = shop.bag("leftovers");
        shop.move(drill(1), Spot.SUPPLIER, leftovers, 80);
        UUID holder = shop.holder("Case A", 1, Optional.empty());
        shop.kitUp(piece, holder);

        assertThat(shop.count(shop.pocket(holder, 0), drill(1))).isEqualTo(130);
        assertThat(shop.count(leftovers, drill(1))).isEqualTo(50);
    }

    @Test
    void leavesRepairPacketsOfOtherPiecesAlone() {
        UUID made = shop.piece("Crane", 100);
        UUID holder = shop.holder("Case A", 1, Optional.empty());
        shop.kitUp(made, holder);
        shop.make(made);
        shop.kitDown(made, 100);
        UUID piece = shop.piece("Rope-walk", 0);
        LegendLine asks = new LegendLine("A", drill(1), Optional.of(50L), Amount.unknown(), Optional.empty(), Map.of());
        shop.apply(Result.ok(ChangeSet.named("Ask")
                .put(Legend.TYPE, piece, Legend.of(List.of(asks)))
                .build()));
        shop.kitUp(piece, holder);

        assertThat(shop.count(shop.bagNamed("Repair packet of Crane"), drill(1)))
                .isEqualTo(100);
    }

    @Test
    void passesOverPocketsThatAreInUse() {
        UUID holder = shop.holder("Case A", 2, Optional.empty());
        shop.move(drill(9), Spot.SUPPLIER, shop.pocket(holder, 0), 5);
        UUID piece = shop.piece("Rope-walk", 100);
        shop.kitUp(piece, holder);

        assertThat(shop.count(shop.pocket(holder, 1), drill(1))).isEqualTo(100);
    }

    @Test
    void dealsPocketsByWhatIsNeeded_whenOnlyTheBookIsKept() {
        UUID piece = shop.piece("Rope-walk", 0, 0);
        Legend legend = Legend.of(shop.view(), piece);
        List<LegendLine> needs = legend.lines().stream()
                .map(l -> new LegendLine(
                        l.symbol(), l.drill(), Optional.of(150L), Amount.unknown(), Optional.empty(), l.extras()))
                .toList();
        shop.apply(Result.ok(ChangeSet.named("Only the book")
                .put(Settings.TYPE, Settings.ID, new Settings(Settings.Depth.ONLY_THE_BOOK, "EUR", false))
                .put(Legend.TYPE, piece, Legend.of(needs))
                .build()));
        UUID holder = shop.holder("Case A", 4, Optional.of(100L));
        shop.kitUp(piece, holder);

        assertThat(KitUp.of(shop.view(), piece).orElseThrow().seats())
                .extracting(KitUp.Seat::symbol)
                .containsExactly("A", "A", "B", "B");
        assertThat(shop.view().spots()).isEmpty();
    }

    @Test
    void refusesAPieceThatIsKittedUpAlready() {
        UUID piece = shop.piece("Rope-walk", 100);
        UUID holder = shop.holder("Case A", 2, Optional.empty());
        shop.kitUp(piece, holder);

        assertThat(refusal(shop.storage().planKitUp(shop.view(), piece, holder, Optional.empty()))
                        .text())
                .startsWith("Rope-walk is kitted up in Case A already.");
    }

    @Test
    void refusesAHolderWithoutAnEmptyPocket() {
        UUID holder = shop.holder("Case A", 1, Optional.empty());
        shop.kitUp(shop.piece("Crane", 10), holder);
        UUID piece = shop.piece("Rope-walk", 100);

        assertThat(refusal(shop.storage().planKitUp(shop.view(), piece, holder, Optional.empty()))
                        .code())
                .isEqualTo("no-pocket");
    }

    @Test
    void isRefused_whenSomethingMovedSinceThePlanWasShown() {
        UUID piece = shop.piece("Rope-walk", 100);
        UUID holder = shop.holder("Case A", 1, Optional.empty());
        KitUpPlan plan = plan(piece, holder);
        shop.move(drill(1), Spot.SUPPLIER, shop.bagNamed("Rope-walk"), 1);

        assertThat(refusal(shop.workshop().apply(plan.change())).code()).isEqualTo("out-of-date");
    }

    @Test
    void leavesTheUncountedHeapOfALooseBagInIt() {
        Spot loose = shop.bag("leftovers");
        shop.move(drill(1), Spot.SUPPLIER, loose, 100);
        shop.apply(Result.ok(ChangeSet.named("Some more")
                .post(Movement.of(UUID.randomUUID(), drill(1), Spot.SUPPLIER, loose, Amount.unknown(), ""))
                .build()));
        UUID piece = shop.piece("Rope-walk", 100);
        shop.move(drill(1), shop.bagNamed("Rope-walk"), Spot.LOST, 60);
        UUID holder = shop.holder("Case A", 1, Optional.empty());
        shop.kitUp(piece, holder);

        assertThat(shop.view().balance(loose, drill(1))).isEqualTo(new Balance(40, 0, 1));
        assertThat(shop.view().balance(shop.pocket(holder, 0), drill(1))).isEqualTo(new Balance(100, 0, 0));
    }

    @Test
    void usesAPocketThatWasEmptiedByHand_andWhatWasUnsureEnds() {
        UUID holder = shop.holder("Case A", 1, Optional.empty());
        Spot pocket = shop.pocket(holder, 0);
        shop.apply(Result.ok(ChangeSet.named("Some")
                .post(Movement.of(UUID.randomUUID(), drill(1), Spot.SUPPLIER, pocket, Amount.rough(200, 14), ""))
                .build()));
        shop.move(drill(1), pocket, Spot.LOST, 200);
        assertThat(shop.storage().freeHolders(shop.view())).hasSize(1);

        shop.kitUp(shop.piece("Rope-walk", 100), holder);
        assertThat(shop.view().balance(pocket, drill(1))).isEqualTo(new Balance(100, 0, 0));
    }

    @Test
    void refusesAPieceThatIsMade_inWords() {
        UUID piece = shop.piece("Rope-walk", 100);
        shop.make(piece);
        UUID holder = shop.holder("Case A", 1, Optional.empty());

        assertThat(refusal(shop.storage().planKitUp(shop.view(), piece, holder, Optional.empty()))
                        .text())
                .isEqualTo("Rope-walk is made, so there is nothing left to kit up. Nothing was moved.");
    }
}
