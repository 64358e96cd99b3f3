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
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.LedgerAction.Movement;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.CardEntry;
import org.glintery.api.stash.ColourCard;
import org.glintery.api.stash.MoveRequest;
import org.glintery.api.storage.Holder;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.FoundDrills;
import org.glintery.api.workshop.LedgerQuery;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DrillMovesTest {

    private WorkshopInFolder shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = WorkshopInFolder.at(folder);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    static MoveRequest request(Drill drill, Spot from, Spot to, long count, boolean believed) {
        return new MoveRequest(
                drill, Optional.empty(), from, to, Amount.counted(count), "tidying", Optional.of(MAY), believed);
    }

    private Result<ChangeSet> move(Drill drill, Spot from, Spot to, long count, boolean believed) {
        return shop.stash().move(shop.view(), request(drill, from, to, count, believed));
    }

    private Spot pocket(int index, Optional<Long> capacity) {
        UUID id = UUID.randomUUID();
        Holder holder = Holder.grid("Case " + id, 1, 2, capacity);
        shop.apply(Result.ok(
                ChangeSet.named("Add a case").create(Holder.TYPE, id, holder).build()));
        return new Spot.InPocket(id, holder.pockets().get(index).id());
    }

    @Test
    void refusesAScriptThatTakesMoreThanIsBooked_andSaysWhatIsThere() {
        Spot from = shop.bag("b1", T1, 200);
        Spot to = shop.bag("b2", T1, 0);

        assertThat(refusal(move(T1, from, to, 250, false)).text())
                .isEqualTo("There are 200 of T1 in bag b1, and 250 were asked for. Nothing was moved.");
    }

    @Test
    void tellsOneAndManyAsPeopleSayThem_whenTooFewAreThere() {
        Spot one = shop.bag("one", T1, 1);
        Spot many = shop.bag("many", T1, 1_200);
        Spot to = shop.bag("b2", T1, 0);

        assertThat(refusal(move(T1, one, to, 2, false)).text())
                .isEqualTo("There is 1 of T1 in bag one, and 2 were asked for. Nothing was moved.");
        assertThat(refusal(move(T1, to, one, 1, false)).text())
                .isEqualTo("There are 0 of T1 in bag b2, and 1 was asked for. Nothing was moved.");
        assertThat(refusal(move(T1, many, to, 12_500, false)).text())
                .isEqualTo(
                        "There are 1\u2009200 of T1 in bag many, and 12\u2009500 were asked for. Nothing was moved.");
    }

    @Test
    void saysThatNobodyHasCounted_whenANumberIsTakenFromAnUncountedHeap() {
        shop.shelve("Rope-walk", silent("A", T1));
        Spot from = shop.bagNamed("Rope-walk");
        Spot to = shop.bag("b2", T1, 0);

        assertThat(refusal(move(T1, from, to, 5, false)).text())
                .isEqualTo("How many of T1 are in bag Rope-walk is not known, and 5 were asked for. Nothing was moved. "
                        + "Count them first, or move them without a number.");
        shop.apply(move(T1, from, to, 1, true));
        assertThat(foundReasons()).containsExactly("1 found: 1 was taken from drills that were not counted");
    }

    @Test
    void tellsWhatWasFound_whenOneWasBooked() {
        Spot from = shop.bag("b1", T1, 1);
        shop.apply(move(T1, from, shop.bag("b2", T1, 0), 1_250, true));

        assertThat(foundReasons()).containsExactly("1249 found: 1\u2009250 were taken where 1 was booked");
    }

    private List<String> foundReasons() {
        List<String> found = new ArrayList<>();
        shop.workshop().ledger(LedgerQuery.all(), entry -> {
            if (entry.from().equals(Spot.FOUND)) {
                found.add(entry.count() + " " + entry.action().reason());
            }
        });
        return found;
    }

    @Test
    void believesAPerson_andFindsTheRestInTheSameChange() {
        Spot from = shop.bag("b1", T1, 200);
        Spot to = shop.bag("b2", T1, 0);
        shop.apply(move(T1, from, to, 250, true));

        assertThat(shop.count(from, T1)).isZero();
        assertThat(shop.count(to, T1)).isEqualTo(250);
        assertThat(foundReasons()).containsExactly("50 found: 250 were taken where 200 were booked");
    }

    @Test
    void lowersThePiecesReservation_whenDrillsGoOntoItsCanvas() {
        UUID piece = shop.shelve("Rope-walk", line("A", T1, 180, 200));
        shop.apply(move(T1, shop.bagNamed("Rope-walk"), new Spot.OnCanvas(piece), 120, false));

        assertThat(shop.view().reserved(T1)).isEqualTo(80);
        assertThat(shop.count(new Spot.OnCanvas(piece), T1)).isEqualTo(120);
    }

    @Test
    void endsTheReservation_whenAllOfItIsLaid() {
        UUID piece = shop.shelve("Rope-walk", line("A", T1, 200, 200));
        shop.apply(move(T1, shop.bagNamed("Rope-walk"), new Spot.OnCanvas(piece), 200, false));

        assertThat(shop.view().reserved(T1)).isZero();
    }

    @Test
    void warnsButMoves_whenThePocketIsTooSmall() {
        Spot from = shop.bag("b1", T1, 200);
        Spot to = pocket(0, Optional.of(100L));
        List<String> warnings = shop.apply(move(T1, from, to, 150, false));

        assertThat(warnings).singleElement().asString().contains("takes about 100 drills and now holds 150");
        assertThat(shop.count(to, T1)).isEqualTo(150);
    }

    @Test
    void tellsWhatAPocketTakes_whetherOneOrAThousand() {
        List<String> one = shop.apply(move(T1, Spot.SUPPLIER, pocket(0, Optional.of(1L)), 2, false));
        List<String> many = shop.apply(move(T1, Spot.SUPPLIER, pocket(0, Optional.of(1_000L)), 1_500, false));

        assertThat(one).singleElement().asString().endsWith(", A1 takes about 1 drill and now holds 2.");
        assertThat(many)
                .singleElement()
                .asString()
                .endsWith(", A1 takes about 1\u2009000 drills and now holds 1\u2009500.");
    }

    @Test
    void warnsButMoves_whenKindsMixInAPocketThatIsNotMarkedMixed() {
        Spot to = pocket(0, Optional.empty());
        shop.apply(move(T1, Spot.SUPPLIER, to, 10, false));
        List<String> warnings = shop.apply(move(T2, Spot.SUPPLIER, to, 10, false));

        assertThat(warnings).singleElement().asString().endsWith("holds T1 too and is not marked mixed.");
        assertThat(shop.view().contents(to)).hasSize(2);
    }

    @Test
    void movesWhatWasNeverCounted_asAWhole() {
        shop.shelve("Rope-walk", silent("A", T1));
        Spot from = shop.bagNamed("Rope-walk");
        Spot to = shop.bag("b2", T1, 0);
        MoveRequest request =
                new MoveRequest(T1, Optional.empty(), from, to, Amount.unknown(), "tidying", Optional.empty(), false);
        shop.apply(shop.stash().move(shop.view(), request));

        assertThat(shop.view().balance(from, T1)).isEqualTo(Balance.ZERO);
        assertThat(shop.view().balance(to, T1)).isEqualTo(new Balance(0, 0, 1));
    }

    @Test
    void makesACodeKnown_whenItIsMovedForTheFirstTime() {
        Drill fresh = Drill.of(T1.shape(), 280, "own", "X77");
        shop.apply(move(fresh, Spot.SUPPLIER, shop.bag("b1", T1, 0), 5, false));

        assertThat(ColourCard.entry(shop.view(), "own", "X77")).contains(CardEntry.UNKNOWN);
    }

    @Test
    void booksTheDifference_whenABagIsCounted() {
        Spot bag = shop.bag("b1", T1, 200);
        shop.apply(shop.stash().stocktake(shop.view(), bag, T1, Amount.counted(187), Optional.empty()));

        assertThat(shop.view().balance(bag, T1)).isEqualTo(new Balance(187, 0, 0));
    }

    @Test
    void refusesToCountWithoutANumber() {
        Spot bag = shop.bag("b1", T1, 200);

        assertThat(refusal(shop.stash().stocktake(shop.view(), bag, T1, Amount.unknown(), Optional.empty()))
                        .code())
                .isEqualTo("no-amount");
    }

    @Test
    void refusesAPocketThatIsGone() {
        Spot gone = new Spot.InPocket(UUID.randomUUID(), UUID.randomUUID());

        assertThat(refusal(move(T1, Spot.SUPPLIER, gone, 5, false)).code()).isEqualTo("no-spot");
    }

    @Test
    void leavesNothingUnsureBehind_whenAllThatIsBookedIsTaken() {
        Spot bag = shop.bag("spare", T1, 0);
        shop.apply(Result.ok(ChangeSet.named("Some")
                .post(Movement.of(UUID.randomUUID(), T1, Spot.SUPPLIER, bag, Amount.rough(200, 14), ""))
                .build()));
        shop.apply(shop.stash().move(shop.view(), request(T1, bag, Spot.LOST, 200, false)));

        assertThat(shop.view().contents(bag)).isEmpty();
    }

    @Test
    void flagsWhatWasFound_untilTheSpotIsCounted() {
        Spot bag = shop.bag("spare", T1, 200);
        shop.apply(shop.stash().move(shop.view(), request(T1, bag, Spot.LOST, 250, true)));
        assertThat(shop.view().all(FoundDrills.TYPE))
                .extracting(found -> found.value())
                .containsExactly(new FoundDrills(T1, bag, 50));

        shop.apply(shop.stash().stocktake(shop.view(), bag, T1, Amount.counted(0), Optional.empty()));
        assertThat(shop.view().all(FoundDrills.TYPE)).isEmpty();
    }
}
